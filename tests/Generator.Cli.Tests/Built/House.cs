using Mono.Cecil;
using Mono.Cecil.Cil;

namespace Generator.Cli.Tests.Built;

/// <summary>The house as it was built: which room and which folder of a room uses which, read from the compiled assemblies.</summary>
internal static class House
{
    private const string Prefix = "Generator.";

    /// <summary>The rooms' assemblies beside this test, by name without prefix; the program itself is the room Cli.</summary>
    public static SortedDictionary<string, AssemblyDefinition> Rooms()
    {
        var rooms = new SortedDictionary<string, AssemblyDefinition>(StringComparer.Ordinal);
        foreach (var file in Directory.EnumerateFiles(AppContext.BaseDirectory, "*.dll").Where(IsRoom))
        {
            var assembly = AssemblyDefinition.ReadAssembly(file);
            rooms.Add(RoomOf(assembly.Name.Name)!, assembly);
        }

        return rooms;
    }

    /// <summary>The room that an assembly is; null for packages and tests.</summary>
    public static string? RoomOf(string assembly) =>
        assembly == "generator" ? "Cli" :
        assembly.StartsWith(Prefix, StringComparison.Ordinal) && !assembly.Contains("Test", StringComparison.Ordinal) ? assembly[Prefix.Length..] : null;

    /// <summary>The uses of folder by folder (namespaces) in a room, each with one type that uses another.</summary>
    public static Dictionary<(string From, string To), string> Uses(AssemblyDefinition room)
    {
        var uses = new Dictionary<(string, string), string>();
        foreach (var type in room.MainModule.GetTypes())
        {
            var from = Folder(type);
            foreach (var used in Used(type).Select(Plain).Where(u => u.Scope == room.MainModule || u is TypeDefinition))
            {
                var to = Folder(used);
                if (from.Length > 0 && to.Length > 0 && from != to)
                {
                    uses.TryAdd((from, to), $"{type.Name} uses {used.Name}");
                }
            }
        }

        return uses;
    }

    private static bool IsRoom(string file) => RoomOf(Path.GetFileNameWithoutExtension(file)) is not null;

    /// <summary>The folder of a type: its namespace, that of the outermost type round it.</summary>
    private static string Folder(TypeReference type)
    {
        while (type.DeclaringType is { } outer)
        {
            type = outer;
        }

        return type.Namespace;
    }

    private static TypeReference Plain(TypeReference type) => type.GetElementType();

    private static IEnumerable<TypeReference> Used(TypeDefinition type)
    {
        var named = new List<TypeReference?> { type.BaseType };
        named.AddRange(type.Interfaces.Select(i => i.InterfaceType));
        named.AddRange(type.Fields.Select(f => f.FieldType));
        foreach (var method in type.Methods)
        {
            named.Add(method.ReturnType);
            named.AddRange(method.Parameters.Select(p => p.ParameterType));
            if (method.HasBody)
            {
                named.AddRange(method.Body.Variables.Select(v => v.VariableType));
                named.AddRange(method.Body.Instructions.SelectMany(Named));
            }
        }

        return named.OfType<TypeReference>().SelectMany(WithArguments);
    }

    private static IEnumerable<TypeReference> Named(Instruction instruction) => instruction.Operand switch
    {
        GenericInstanceMethod method => [method.DeclaringType, .. method.GenericArguments],
        MemberReference { DeclaringType: { } declaring } and not TypeReference => [declaring],
        TypeReference type => [type],
        _ => [],
    };

    private static IEnumerable<TypeReference> WithArguments(TypeReference type) => type switch
    {
        GenericInstanceType generic => [generic.ElementType, .. generic.GenericArguments.SelectMany(WithArguments)],
        TypeSpecification { ElementType: { } element } => WithArguments(element),
        GenericParameter => [],
        _ => [type],
    };
}
