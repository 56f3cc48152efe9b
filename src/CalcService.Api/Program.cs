using CalcService.Api;

ServiceHost.Create(args).Run();
