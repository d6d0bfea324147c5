# Completion of leverage for PowerShell: leverage --completion powershell | Out-String | Invoke-Expression
# The program itself says what may follow; where it knows of nothing, files are offered.
Register-ArgumentCompleter -Native -CommandName leverage -ScriptBlock {
    param($wordToComplete, $commandAst, $cursorPosition)
    $program = $commandAst.CommandElements[0]
    $typed = $commandAst.Extent.Text.PadRight($cursorPosition - $commandAst.Extent.StartOffset)
    $typed = $typed.Substring(0, $cursorPosition - $commandAst.Extent.StartOffset - $wordToComplete.Length)
    $before = $typed.Substring([Math]::Min($typed.Length, $program.Extent.Text.Length)).TrimStart()
    & $program.Extent.Text "[suggest:$($before.Length)]" $before 2>$null |
        Where-Object { $_ -ne '' -and $_.StartsWith($wordToComplete, [StringComparison]::Ordinal) } |
        ForEach-Object {
            $text = if ($_ -match '[\s"]') { "'" + $_.Replace("'", "''") + "'" } else { $_ }
            [System.Management.Automation.CompletionResult]::new($text, $_, 'ParameterValue', $_)
        }
}
