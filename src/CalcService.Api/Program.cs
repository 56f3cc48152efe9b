using CalcService.Api;
using CalcService.Api.Hosting;

try
{
    ServiceHost.Create(args).Run();
    return 0;
}
catch (StartRefusedException refused)
{
    // Whoever configured it needs the sentence, not the stack.
    Console.Error.WriteLine(refused.Message);
    return 1;
}
