namespace HintBook.Reading.Shapes;

/// <summary>The keys of a shape and of what lies in it, each with its way there: <c>parts.NAME.positions</c>.</summary>
internal static class KeyRows
{
    public static IEnumerable<(string Key, Field Field, string Takes)> Of(FieldsShape shape) => In(shape, "", []);

    private static IEnumerable<(string Key, Field Field, string Takes)> In(FieldsShape shape, string way, Dictionary<FieldsShape, string> told)
    {
        foreach (var field in shape.Fields)
        {
            var key = way + field.Key;
            var inner = Inside(field.Shape, key).DistinctBy(each => each.Shape).ToArray();
            var before = inner.Select(each => told.GetValueOrDefault(each.Shape)).OfType<string>().FirstOrDefault();
            yield return (key, field, field.Shape.Wanted + (before is null ? "" : $"; its keys are those of `{before}`"));
            foreach (var (below, fields) in inner.Where(each => told.TryAdd(each.Shape, key)))
            {
                foreach (var row in In(fields, below + ".", told))
                    yield return row;
            }
        }
    }

    // The keys that lie directly in a shape, in lists and under names of the author's choice too. A shape that is met again is told once.
    private static IEnumerable<(string Way, FieldsShape Shape)> Inside(Shape? shape, string way) => shape switch
    {
        FieldsShape fields => [(way, fields)],
        ListShape list => Inside(list.Item, way),
        NamedShape named => Inside(named.Value, way + ".NAME"),
        FieldsByKeyShape byKey => [(way, byKey.Without), (way, byKey.With)],
        EitherShape either => [.. Inside(either.Keys, way), .. Inside(either.List, way)],
        _ => [],
    };
}
