using System.Diagnostics;
using System.Text.Json;

namespace Generator.Paperwork.Tests.HandOffs;

/// <summary>A test that asks the glTF validator of the Khronos Group, a package of npm; left out, saying why, where that cannot be had.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ValidatorFactAttribute : FactAttribute
{
    private const string Package = "gltf-validator@2.0.0-dev.3.10";

    private static readonly string Folder = Path.Combine(Path.GetTempPath(), "generator-gltf-validator");

    private static readonly Lazy<string?> Missing = new(Install);

    public ValidatorFactAttribute() => Skip = Missing.Value;

    /// <summary>The validator's report on a binary glTF.</summary>
    public static JsonDocument Report(byte[] bytes)
    {
        var file = Path.Combine(Folder, Guid.NewGuid().ToString("N") + ".glb");
        File.WriteAllBytes(file, bytes);
        try
        {
            const string Script = "require('gltf-validator').validateBytes(new Uint8Array(require('fs').readFileSync(process.argv[1]))).then(r => console.log(JSON.stringify(r)))";
            return JsonDocument.Parse(Run("node", ["-e", Script, file]).Out);
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static string? Install()
    {
        try
        {
            Directory.CreateDirectory(Folder);
            if (Directory.Exists(Path.Combine(Folder, "node_modules", "gltf-validator")))
            {
                return null;
            }

            var (code, text) = Run("npm", ["install", "--no-audit", "--no-fund", "--prefix", Folder, Package]);
            return code == 0 ? null : $"npm does not install {Package} here: {text.Trim()}";
        }
        catch (Exception e) when (e is System.ComponentModel.Win32Exception or IOException)
        {
            return $"npm cannot be started here: {e.Message}";
        }
    }

    private static (int Code, string Out) Run(string program, IEnumerable<string> arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { UseShellExecute = false, WorkingDirectory = Folder, RedirectStandardOutput = true, RedirectStandardError = true })!;
        var errors = process.StandardError.ReadToEndAsync();
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, text.Length > 0 ? text : errors.Result);
    }
}
