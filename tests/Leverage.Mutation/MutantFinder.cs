using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Leverage.Mutation;

/// <summary>Finds every operator, comparison, constant and paired function of a file that can be changed.</summary>
internal sealed class MutantFinder(SemanticModel model, string folder, string file, bool edges, Func<int> next) : CSharpSyntaxWalker
{
    private static readonly Dictionary<SyntaxKind, string[]> Operators = new()
    {
        [SyntaxKind.PlusToken] = ["-"],
        [SyntaxKind.MinusToken] = ["+"],
        [SyntaxKind.AsteriskToken] = ["/"],
        [SyntaxKind.SlashToken] = ["*"],
        [SyntaxKind.PercentToken] = ["*"],
        [SyntaxKind.LessThanToken] = [">=", "<="],
        [SyntaxKind.LessThanEqualsToken] = [">", "<"],
        [SyntaxKind.GreaterThanToken] = ["<=", ">="],
        [SyntaxKind.GreaterThanEqualsToken] = ["<", ">"],
        [SyntaxKind.EqualsEqualsToken] = ["!="],
        [SyntaxKind.ExclamationEqualsToken] = ["=="],
        [SyntaxKind.AmpersandAmpersandToken] = ["||"],
        [SyntaxKind.BarBarToken] = ["&&"],
        [SyntaxKind.BarToken] = ["&"],
        [SyntaxKind.AmpersandToken] = ["|"],
        [SyntaxKind.PlusEqualsToken] = ["-="],
        [SyntaxKind.MinusEqualsToken] = ["+="],
        [SyntaxKind.AsteriskEqualsToken] = ["/="],
        [SyntaxKind.BarEqualsToken] = ["&="],
    };

    private static readonly Dictionary<string, string> Functions = new(StringComparer.Ordinal)
    {
        ["Min"] = "Max",
        ["Max"] = "Min",
        ["Sin"] = "Cos",
        ["Cos"] = "Sin",
        ["Tan"] = "Sin",
        ["Sqrt"] = "Abs",
        ["Atan"] = "Sin",
        ["Abs"] = "Exp",
        ["Exp"] = "Abs",
        ["Log"] = "Exp",
        ["Floor"] = "Ceiling",
        ["Ceiling"] = "Floor",
    };

    private static readonly SyntaxKind[] Comparisons =
        [SyntaxKind.LessThanToken, SyntaxKind.LessThanEqualsToken, SyntaxKind.GreaterThanToken, SyntaxKind.GreaterThanEqualsToken];

    /// <summary>The mutants found.</summary>
    public List<Mutant> Found { get; } = [];

    public override void VisitAttributeList(AttributeListSyntax node)
    {
    }

    /// <summary>A default is compiled into its callers, the tests among them: a change here reaches nobody.</summary>
    public override void VisitEqualsValueClause(EqualsValueClauseSyntax node)
    {
        if (node.Parent is not ParameterSyntax)
        {
            base.VisitEqualsValueClause(node);
        }
    }

    public override void VisitBinaryExpression(BinaryExpressionSyntax node)
    {
        if (model.GetTypeInfo(node).Type?.SpecialType != SpecialType.System_String)
        {
            Operator(node.OperatorToken);
        }

        base.VisitBinaryExpression(node);
    }

    public override void VisitAssignmentExpression(AssignmentExpressionSyntax node)
    {
        Operator(node.OperatorToken);
        base.VisitAssignmentExpression(node);
    }

    public override void VisitRelationalPattern(RelationalPatternSyntax node)
    {
        Operator(node.OperatorToken);
        base.VisitRelationalPattern(node);
    }

    public override void VisitPrefixUnaryExpression(PrefixUnaryExpressionSyntax node)
    {
        if (node.OperatorToken.Kind() is SyntaxKind.MinusToken or SyntaxKind.ExclamationToken && node.Operand is not LiteralExpressionSyntax)
        {
            Add(node.OperatorToken, " ");
        }

        base.VisitPrefixUnaryExpression(node);
    }

    public override void VisitLiteralExpression(LiteralExpressionSyntax node)
    {
        if (node.Token.Value is double real)
        {
            Add(node.Token, real == 0 ? "1.0" : (real * 1.01).ToString("R", CultureInfo.InvariantCulture) + (real * 1.01 % 1 == 0 ? ".0" : ""));
        }
        else if (node.Token.Value is int whole)
        {
            Add(node.Token, (whole + 1).ToString(CultureInfo.InvariantCulture));
        }
        else if (node.Token.Value is bool yes)
        {
            Add(node.Token, yes ? "false" : "true");
        }
    }

    public override void VisitMemberAccessExpression(MemberAccessExpressionSyntax node)
    {
        if (node is { Expression: IdentifierNameSyntax { Identifier.Text: "Math" }, Name: { } name }
            && Functions.TryGetValue(name.Identifier.Text, out string? other))
        {
            Add(name.Identifier, other);
        }

        base.VisitMemberAccessExpression(node);
    }

    private void Operator(SyntaxToken token)
    {
        if (Operators.TryGetValue(token.Kind(), out string[]? others))
        {
            foreach (string other in edges || !Comparisons.Contains(token.Kind()) ? others : others[..1])
            {
                Add(token, other);
            }
        }
    }

    private void Add(SyntaxToken token, string text)
    {
        SyntaxNode whole = token.Parent!;
        while (whole is not ExpressionSyntax || whole.Parent is MemberAccessExpressionSyntax or InvocationExpressionSyntax)
        {
            if (whole.Parent is null or StatementSyntax or MemberDeclarationSyntax)
            {
                break;
            }

            whole = whole.Parent;
        }

        int line = token.GetLocation().GetLineSpan().StartLinePosition.Line + 1;
        Found.Add(new Mutant(next(), folder, file, line, new TextChange(token.Span, text), whole.Span, token.Text, AtStart(token)));
    }

    private static bool AtStart(SyntaxToken token) =>
        token.Parent!.FirstAncestorOrSelf<EqualsValueClauseSyntax>() is { Parent: var owner }
            && owner is PropertyDeclarationSyntax or VariableDeclaratorSyntax { Parent.Parent: FieldDeclarationSyntax }
            && owner.FirstAncestorOrSelf<MemberDeclarationSyntax>()!.Modifiers.Any(one => one.Kind() is SyntaxKind.StaticKeyword or SyntaxKind.ConstKeyword);
}
