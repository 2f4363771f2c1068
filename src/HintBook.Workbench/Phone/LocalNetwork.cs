using System.Collections.Immutable;
using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace HintBook.Workbench.Phone;

/// <summary>This computer's addresses in the local network.</summary>
internal static class LocalNetwork
{
    /// <summary>The addresses, those that home and workshop networks use first (RFC 1918); none where there is no network.</summary>
    public static ImmutableArray<IPAddress> Addresses() =>
    [
        .. NetworkInterface.GetAllNetworkInterfaces()
            .Where(network => network.OperationalStatus == OperationalStatus.Up && network.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .SelectMany(network => network.GetIPProperties().UnicastAddresses)
            .Select(each => each.Address)
            .Where(address => address.AddressFamily == AddressFamily.InterNetwork && !IPAddress.IsLoopback(address))
            .Distinct()
            .OrderBy(Rank),
    ];

    private static int Rank(IPAddress address) => address.GetAddressBytes() switch
    {
        [192, 168, ..] => 0,
        [10, ..] => 1,
        [172, >= 16 and <= 31, ..] => 2,
        // Given to itself by a computer that found no network (RFC 3927).
        [169, 254, ..] => 4,
        _ => 3,
    };
}
