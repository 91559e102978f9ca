package wainbook.line.milestone.webhook;

import java.net.InetAddress;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What an address to be told may look like, and where it may lead: never into the works' own network unless that is allowed. */
public final class Address {

    private static final int LONGEST = 300;
    private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");

    /**
     * By RFC 6890 and what goes by it: this network, private, shared, link-local, for protocols, for measuring, reserved; IPv6 that holds an
     * IPv4 address, translates to one, is for special purposes or documentation, unique local, link-local, site-local.
     */
    private static final List<Net> KEPT_APART = Stream.of(
                    "0.0.0.0/8",
                    "10.0.0.0/8",
                    "100.64.0.0/10",
                    "169.254.0.0/16",
                    "172.16.0.0/12",
                    "192.0.0.0/24",
                    "192.168.0.0/16",
                    "198.18.0.0/15",
                    "240.0.0.0/4",
                    "::/16",
                    "64:ff9b::/32",
                    "2001::/23",
                    "2001:db8::/32",
                    "2002::/16",
                    "fc00::/7",
                    "fe80::/10",
                    "fec0::/10")
            .map(Net::of)
            .toList();

    /**
     * What the works allows by its configuration.
     *
     * @param privateNetworks addresses of private networks, link-local ones too
     * @param plainLoopback http to this machine: for tests and for building a receiver
     */
    public record Allowed(boolean privateNetworks, boolean plainLoopback) {}

    private Address() {}

    /** The address as typed, where it may be one: https, a host, no user, no fragment. */
    public static Optional<URI> read(String typed, Allowed allowed) {
        if (typed.length() > LONGEST) {
            return Optional.empty();
        }
        try {
            URI address = new URI(typed);
            return Optional.of(address)
                    .filter(uri -> uri.getHost() != null && uri.getUserInfo() == null && uri.getFragment() == null)
                    .filter(uri -> "https".equalsIgnoreCase(uri.getScheme()) || plain(uri, allowed));
        } catch (URISyntaxException unreadable) {
            return Optional.empty();
        }
    }

    private static boolean plain(URI address, Allowed allowed) {
        return allowed.plainLoopback()
                && "http".equalsIgnoreCase(address.getScheme())
                && LOOPBACK.contains(address.getHost().toLowerCase(Locale.ROOT));
    }

    /** Whether a name may lead there. Asked of every address that it has, each time that something is sent. */
    public static boolean mayLead(InetAddress to, Allowed allowed) {
        if (to.isAnyLocalAddress() || to.isMulticastAddress()) {
            return false;
        }
        if (to.isLoopbackAddress()) {
            return allowed.privateNetworks() || allowed.plainLoopback();
        }
        return allowed.privateNetworks() || KEPT_APART.stream().noneMatch(net -> net.has(to));
    }

    /** Addresses that begin alike. */
    private record Net(InetAddress begin, int bits) {

        static Net of(String written) {
            String[] parts = written.split("/");
            try {
                return new Net(InetAddress.getByName(parts[0]), Integer.parseInt(parts[1]));
            } catch (UnknownHostException noNumber) {
                throw new IllegalArgumentException(written, noNumber);
            }
        }

        boolean has(InetAddress address) {
            byte[] its = address.getAddress();
            byte[] ours = begin.getAddress();
            return its.length == ours.length
                    && IntStream.range(0, bits).allMatch(bit -> bit(its, bit) == bit(ours, bit));
        }

        private static int bit(byte[] bytes, int bit) {
            return (bytes[bit / Byte.SIZE] >> (Byte.SIZE - 1 - bit % Byte.SIZE)) & 1;
        }
    }
}
