using Tomlyn.Syntax;

namespace Leverage.Workshop.Files;

/// <summary>Turns the library's syntax tree, already checked, into nested tables.</summary>
internal sealed class SyntaxReader
{
    private readonly string _path;

    internal SyntaxReader(string path) => _path = path;

    internal TomlSection Read(DocumentSyntax document)
    {
        var root = new TomlSection("", new FilePlace(_path, 1, 1));
        Fill(root, document.KeyValues);
        foreach (TableSyntaxBase table in document.Tables)
        {
            Fill(Opened(root, table), table.Items);
        }

        return root;
    }

    /// <summary>The table a header opens: the last one of each name on the way, a new one at the end of <c>[[…]]</c>.</summary>
    private TomlSection Opened(TomlSection root, TableSyntaxBase table)
    {
        List<(string Key, FilePlace Place)> path = Parts(table.Name!);
        TomlSection parent = root;
        for (int i = 0; i < path.Count - 1; i++)
        {
            parent = Within(parent, path[i]);
        }

        return table is TableArraySyntax ? Appended(parent, path[^1]) : Within(parent, path[^1]);
    }

    private void Fill(TomlSection section, IEnumerable<KeyValueSyntax> pairs)
    {
        foreach (KeyValueSyntax pair in pairs)
        {
            List<(string Key, FilePlace Place)> path = Parts(pair.Key!);
            TomlSection parent = section;
            for (int i = 0; i < path.Count - 1; i++)
            {
                parent = Within(parent, path[i]);
            }

            parent.TryAdd(path[^1].Key, path[^1].Place, Value(path[^1].Key, pair.Value!));
        }
    }

    private TomlValue Value(string key, ValueSyntax value)
    {
        FilePlace place = TomlFile.Place(_path, value.Span);
        return value switch
        {
            StringValueSyntax text => new TomlText(place, text.Value ?? ""),
            ArraySyntax array => new TomlList(place, [.. array.Items.Select(item => Value(key, item.Value!))]),
            InlineTableSyntax inline => new TomlTable(place, Inline(key, place, inline)),
            IntegerValueSyntax { Token.Text: { } whole } => new TomlText(place, whole),
            FloatValueSyntax { Token.Text: { } number } => new TomlText(place, number),
            BooleanValueSyntax { Token.Text: { } flag } => new TomlText(place, flag),
            _ => new TomlText(place, value.ToString().Trim()),
        };
    }

    private TomlSection Inline(string key, FilePlace place, InlineTableSyntax inline)
    {
        var section = new TomlSection(key, place);
        Fill(section, inline.Items.Select(item => item.KeyValue!));
        return section;
    }

    /// <summary>The table under a key, begun if it is not there; of several, the last.</summary>
    private static TomlSection Within(TomlSection parent, (string Key, FilePlace Place) part)
    {
        switch (parent.Peek(part.Key))
        {
            case TomlTable table:
                return table.Section;
            case TomlList { Items: [.., TomlTable last] }:
                return last.Section;
            default:
                var section = new TomlSection(part.Key, part.Place);
                parent.TryAdd(part.Key, part.Place, new TomlTable(part.Place, section));
                return section;
        }
    }

    private static TomlSection Appended(TomlSection parent, (string Key, FilePlace Place) part)
    {
        var section = new TomlSection(part.Key, part.Place);
        var table = new TomlTable(part.Place, section);
        if (parent.Peek(part.Key) is TomlList { Items: List<TomlValue> items })
        {
            items.Add(table);
        }
        else
        {
            parent.TryAdd(part.Key, part.Place, new TomlList(part.Place, new List<TomlValue> { table }));
        }

        return section;
    }

    private List<(string Key, FilePlace Place)> Parts(KeySyntax key)
    {
        var parts = new List<(string, FilePlace)> { Part(key.Key!) };
        parts.AddRange(key.DotKeys.Select(dotted => Part(dotted.Key!)));
        return parts;
    }

    private (string Key, FilePlace Place) Part(BareKeyOrStringValueSyntax part)
    {
        FilePlace place = TomlFile.Place(_path, part.Span);
        return part is StringValueSyntax text ? (text.Value ?? "", place) : (part.ToString().Trim(), place);
    }
}
