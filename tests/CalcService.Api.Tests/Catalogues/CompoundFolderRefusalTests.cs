using System.Diagnostics;
using CalcService.Api.Hosting;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Catalogues;

/// <summary>What is wrong in the folder keeps the service from starting, and is said in one line.</summary>
public sealed class CompoundFolderRefusalTests
{
    private const int MiB = 1 << 20;

    [Theory]
    [InlineData("", "Not JSON")]
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

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Refused_start_is_one_line_on_standard_error_and_exit_code_1(bool byEnvironment)
    {
        using var folder = new SheetFolder().With("shop.json", SheetFolder.Sheet.With("/potLife/value", 101));
        var start = new ProcessStartInfo("dotnet") { RedirectStandardError = true, RedirectStandardOutput = true };
        start.ArgumentList.Add(typeof(ServiceHost).Assembly.Location);
        if (byEnvironment)
        {
            start.Environment["Compounds__Folder"] = folder.Path;
        }
        else
        {
            start.ArgumentList.Add("--Compounds:Folder=" + folder.Path);
        }

        using var process = Process.Start(start)!;
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        patience.CancelAfter(TimeSpan.FromMinutes(2));
        try
        {
            var output = process.StandardOutput.ReadToEndAsync(patience.Token);
            var error = await process.StandardError.ReadToEndAsync(patience.Token);
            await process.WaitForExitAsync(patience.Token);

            Assert.Equal(1, process.ExitCode);
            Assert.Empty(await output);
            Assert.Equal(
                $"Compound sheet {folder.PathOf("shop.json")}: /potLife 101 % is out of range; allowed: 1 to 100 %.{Environment.NewLine}",
                error);
        }
        finally
        {
            process.Kill();
        }
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
