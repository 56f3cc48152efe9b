using System.Diagnostics;
using CalcService.Api.Hosting;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Catalogues;

/// <summary>What is wrong in the folder keeps the service from starting, and is said in one line.</summary>
public sealed class CompoundFolderRefusalTests
{
    private const int MiB = 1 << 20;

    [Theory]
    [InlineData(" ", "Not JSON")]
    [InlineData("", "it is empty or no file")]
    [InlineData("{\"name\": \"x\", \"kits\": [}", "Not JSON")]
    [InlineData("[]", "expected an object")]
    [InlineData("{\"name\": \"x\"}", "/kits “kits” is required.")]
    [InlineData("{\"nam\": \"x\", \"kits\": []}", "/nam “nam” is not known here")]
    [InlineData("{\"name\": \"x\", \"kits\": []}", "/kits 0 items; at least 1")]
    [InlineData("{\"name\": \"x\", \"kits\": [{\"code\": \"s\", \"volume\": {\"value\": 0, \"unit\": \"mL\"}}]}", "/kits/0/volume")]
    [InlineData("{\"name\": \"x\", \"kits\": [{\"code\": \"s\", \"volume\": {\"value\": 1, \"unit\": \"pint\"}}]}", "/kits/0/volume/unit")]
    public void Sheet_that_a_request_could_not_carry_refuses_the_start_with_file_and_pointer(string text, string says)
    {
        using var folder = new SheetFolder().With("good.json", SheetFolder.Sheet).With("shop.json", text);

        Assert.Contains(says, Refusal(folder.Path, "Compound sheet " + folder.PathOf("shop.json")), StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_with_several_errors_has_them_all_in_the_message()
    {
        using var folder = new SheetFolder()
            .With("shop.json", SheetFolder.Sheet.With("/potLife/value", 101).With("/kits/0/volume/value", -1));

        var message = Refusal(folder.Path, folder.PathOf("shop.json"));

        Assert.All(["/potLife ", "/kits/0/volume "], pointer => Assert.Contains(pointer, message, StringComparison.Ordinal));
    }

    [Fact]
    public void Id_that_exists_already_refuses_the_start()
    {
        using var shipped = new SheetFolder().With("demonstration.json", SheetFolder.Sheet);
        Assert.Contains("demonstration exists already", Refusal(shipped.Path, shipped.PathOf("demonstration.json")),
            StringComparison.Ordinal);

        using var twice = new SheetFolder().With("shop.json", SheetFolder.Sheet).With("shop.JSON", SheetFolder.Sheet);
        // Where the file system takes both names for one file, there is only one.
        if (Directory.GetFiles(twice.Path).Length == 2)
        {
            Assert.Contains("shop exists already", Refusal(twice.Path, twice.Path), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("right\u202Eleft")]
    [InlineData("one\u0085two")]
    public void File_name_that_can_be_no_id_refuses_the_start(string id)
    {
        using var folder = new SheetFolder().With(id + ".json", SheetFolder.Sheet);

        Assert.Contains("can't be an id", Refusal(folder.Path, folder.Path), StringComparison.Ordinal);
    }

    [Fact]
    public async Task File_name_may_have_as_many_characters_as_a_text_of_a_request()
    {
        using var longest = new SheetFolder().With(new string('n', 128) + ".json", SheetFolder.Sheet);
        await using var app = ServiceHost.Create(Arguments(longest.Path));

        using var longer = new SheetFolder().With(new string('n', 129) + ".json", SheetFolder.Sheet);
        Assert.Contains("129 characters", Refusal(longer.Path, longer.Path), StringComparison.Ordinal);
    }

    [Fact]
    public async Task File_of_1_MiB_is_read_and_one_byte_more_refuses_the_start()
    {
        var sheet = SheetFolder.Sheet.ToJsonString();
        using var most = new SheetFolder().With("shop.json", sheet.PadRight(MiB));
        await using var app = ServiceHost.Create(Arguments(most.Path));

        using var more = new SheetFolder().With("shop.json", sheet.PadRight(MiB + 1));
        Assert.Contains("more than 1048576 bytes", Refusal(more.Path, more.PathOf("shop.json")), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_there_to_be_read_refuses_the_start()
    {
        using var folder = new SheetFolder().With("good.json", SheetFolder.Sheet);
        Assert.Contains("can't be read", Refusal(folder.PathOf("none"), "Compounds:Folder " + folder.PathOf("none")),
            StringComparison.Ordinal);
        Assert.Contains("can't be read", Refusal(folder.PathOf("good.json"), "Compounds:Folder"), StringComparison.Ordinal);

        File.CreateSymbolicLink(folder.PathOf("link.json"), folder.PathOf("gone"));
        Assert.Contains("can't be read", Refusal(folder.Path, folder.PathOf("link.json")), StringComparison.Ordinal);
    }

    /// <summary>A pipe that nobody writes to would be waited for without end.</summary>
    [Fact]
    public void What_is_called_a_sheet_and_is_no_file_refuses_the_start()
    {
        using var pipe = new SheetFolder().With("good.json", SheetFolder.Sheet);
        using (var made = Process.Start("mkfifo", [pipe.PathOf("pipe.json")]))
        {
            made.WaitForExit();
        }

        Assert.Contains("no file", Refusal(pipe.Path, pipe.PathOf("pipe.json")), StringComparison.Ordinal);

        using var linked = new SheetFolder();
        File.CreateSymbolicLink(linked.PathOf("linked.json"), pipe.PathOf("pipe.json"));
        Assert.Contains("no file", Refusal(linked.Path, linked.PathOf("linked.json")), StringComparison.Ordinal);

        using var device = new SheetFolder();
        File.CreateSymbolicLink(device.PathOf("zero.json"), "/dev/zero");
        Assert.Contains("no file", Refusal(device.Path, device.PathOf("zero.json")), StringComparison.Ordinal);

        using var below = new SheetFolder();
        Directory.CreateDirectory(below.PathOf("below.json"));
        Assert.Contains("no file", Refusal(below.Path, below.PathOf("below.json")), StringComparison.Ordinal);

        using var loop = new SheetFolder();
        File.CreateSymbolicLink(loop.PathOf("loop.json"), loop.Path);
        Assert.Contains("no file", Refusal(loop.Path, loop.PathOf("loop.json")), StringComparison.Ordinal);

        using var round = new SheetFolder();
        File.CreateSymbolicLink(round.PathOf("round.json"), round.PathOf("round.json"));
        Assert.Contains("can't be read", Refusal(round.Path, round.PathOf("round.json")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Refused_start_is_one_line_on_standard_error_and_exit_code_1(bool byEnvironment)
    {
        using var folder = new SheetFolder().With("shop.json", SheetFolder.Sheet.With("/potLife/value", 101));
        var end = byEnvironment ? await RefusedStart.RunAsync([], ("Compounds__Folder", folder.Path))
            : await RefusedStart.RunAsync(["--Compounds:Folder=" + folder.Path]);

        Assert.Equal((1, "", $"Compound sheet {folder.PathOf("shop.json")}: /potLife 101 % is out of range; allowed: 1 to 100 %."
            + Environment.NewLine), (end.ExitCode, end.Output, end.Error));
    }

    private static string[] Arguments(string folder) => ["--Compounds:Folder=" + folder, "--Log:Level=Fatal"];

    private static string Refusal(string folder, string begins)
    {
        var message = Assert.Throws<StartRefusedException>(() => ServiceHost.Create(Arguments(folder))).Message;
        Assert.Contains(begins, message, StringComparison.Ordinal);
        Assert.DoesNotContain(message, char.IsControl);
        return message;
    }
}
