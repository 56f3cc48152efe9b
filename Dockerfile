FROM mcr.microsoft.com/dotnet/sdk:10.0 AS build
WORKDIR /source
COPY global.json Directory.Build.props Directory.Packages.props .editorconfig ./
COPY src/CalcService.Engine/CalcService.Engine.csproj src/CalcService.Engine/packages.lock.json src/CalcService.Engine/
COPY src/CalcService.Api/CalcService.Api.csproj src/CalcService.Api/packages.lock.json src/CalcService.Api/
RUN dotnet restore src/CalcService.Api/CalcService.Api.csproj --locked-mode
COPY docs docs
COPY http-examples http-examples
COPY src src
RUN dotnet publish src/CalcService.Api/CalcService.Api.csproj --configuration Release --runtime linux-x64 --no-self-contained --no-restore --output /published

FROM mcr.microsoft.com/dotnet/aspnet:10.0
WORKDIR /app
COPY --from=build /published .
# Nothing is written: the root may be read-only, so the runtime's diagnostics socket stays off.
# Probes have a listener of their own: whoever holds all connections of the other one doesn't keep them out.
ENV ASPNETCORE_HTTP_PORTS= Kestrel__Endpoints__Work__Url=http://*:8080 Kestrel__Endpoints__Health__Url=http://*:8081 DOTNET_EnableDiagnostics=0
EXPOSE 8080 8081
USER $APP_UID
# The image has no curl; bash speaks enough HTTP for a probe.
HEALTHCHECK --interval=10s --timeout=3s \
  CMD ["bash", "-c", "exec 3<>/dev/tcp/127.0.0.1/8081 && printf 'GET /health/ready HTTP/1.0\\r\\n\\r\\n' >&3 && head -n 1 <&3 | grep -q ' 200 '"]
ENTRYPOINT ["dotnet", "CalcService.Api.dll"]
