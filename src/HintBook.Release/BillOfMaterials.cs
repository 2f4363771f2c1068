using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace HintBook.Release;

/// <summary>
/// What a program is made of, as CycloneDX 1.6 (ECMA-424) in JSON. Without a time and without a serial number, so that the same files give the same text.
/// </summary>
internal static class BillOfMaterials
{
    private const string Own = "hintbook";

    /// <summary>Writes it.</summary>
    /// <param name="version">The program's version.</param>
    /// <param name="system">The system that it is for.</param>
    /// <param name="sha256">The SHA-256 of the program's file, in hexadecimal digits.</param>
    /// <param name="components">What it is made of.</param>
    public static string Write(string version, string system, string sha256, ImmutableArray<Component> components)
    {
        using var written = new MemoryStream();
        using (var json = new Utf8JsonWriter(written, new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "http://cyclonedx.org/schema/bom-1.6.schema.json");
            json.WriteString("bomFormat", "CycloneDX");
            json.WriteString("specVersion", "1.6");
            json.WriteNumber("version", 1);
            json.WriteStartObject("metadata");
            json.WriteStartObject("component");
            json.WriteString("type", "application");
            json.WriteString("bom-ref", Own);
            json.WriteString("name", Own);
            json.WriteString("version", version);
            json.WriteString("description", $"HintBook for {system}");
            Hash(json, "SHA-256", sha256);
            Licence(json, "MIT", "");
            json.WriteEndObject();
            json.WriteEndObject();
            json.WriteStartArray("components");
            foreach (var component in components)
                Write(json, component);
            json.WriteEndArray();
            json.WriteStartArray("dependencies");
            Needs(json, Own, components.Select(component => component.Purl));
            foreach (var component in components)
                Needs(json, component.Purl, components.Where(other => component.Needs.Contains(other.Name)).Select(other => other.Purl));
            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(written.ToArray()) + "\n";
    }

    private static void Write(Utf8JsonWriter json, Component component)
    {
        json.WriteStartObject();
        json.WriteString("type", "library");
        json.WriteString("bom-ref", component.Purl);
        json.WriteString("name", component.Name);
        json.WriteString("version", component.Version);
        Hash(json, "SHA-512", component.Sha512);
        Licence(json, component.Licence, component.LicenceAddress);
        if (component.Copyright.Length > 0)
            json.WriteString("copyright", component.Copyright);
        json.WriteString("purl", component.Purl);
        json.WriteEndObject();
    }

    private static void Hash(Utf8JsonWriter json, string kind, string digits)
    {
        if (digits.Length == 0)
            return;
        json.WriteStartArray("hashes");
        json.WriteStartObject();
        json.WriteString("alg", kind);
        json.WriteString("content", digits);
        json.WriteEndObject();
        json.WriteEndArray();
    }

    // One licence is an id; “MIT AND Apache-2.0” is an expression; an address alone is a name and a reference.
    private static void Licence(Utf8JsonWriter json, string expression, string address)
    {
        if (expression.Length == 0 && address.Length == 0)
            return;
        json.WriteStartArray("licenses");
        json.WriteStartObject();
        if (expression.Contains(' ', StringComparison.Ordinal))
        {
            json.WriteString("expression", expression);
        }
        else
        {
            json.WriteStartObject("license");
            json.WriteString(expression.Length > 0 ? "id" : "name", expression.Length > 0 ? expression : "see its address");
            if (address.Length > 0)
                json.WriteString("url", address);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void Needs(Utf8JsonWriter json, string whose, IEnumerable<string> needs)
    {
        json.WriteStartObject();
        json.WriteString("ref", whose);
        json.WriteStartArray("dependsOn");
        foreach (var need in needs)
            json.WriteStringValue(need);
        json.WriteEndArray();
        json.WriteEndObject();
    }
}
