using CalcService.Api;
using CalcService.Api.Hosting;

try
{
    await using var app = ServiceHost.Create(args);
    await Listening.StartAsync(app);
    await app.WaitForShutdownAsync();
    return 0;
}
catch (StartRefusedException refused)
{
    // Whoever configured it needs the sentence, not the stack.
    await Console.Error.WriteLineAsync(refused.Message);
    return 1;
}
