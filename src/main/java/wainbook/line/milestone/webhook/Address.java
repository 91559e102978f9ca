package wainbook.line.milestone.webhook;

import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What an address to be told may look like, and where it may lead: never into the works' own network unless that is allowed. */
public final class Address {

    private static final int LONGEST = 300;
    private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");

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
        return allowed.privateNetworks() || !inside(to);
    }

    /** RFC 6890 and what goes by it: private, shared, link-local, for tests, reserved; and IPv6 that wraps IPv4. */
    private static boolean inside(InetAddress to) {
        byte[] bytes = to.getAddress();
        int first = bytes[0] & 0xff;
        int second = bytes[1] & 0xff;
        if (to.isLinkLocalAddress() || to.isSiteLocalAddress()) {
            return true;
        }
        if (to instanceof Inet6Address) {
            boolean unique = (first & 0xfe) == 0xfc;
            boolean translated = first == 0x00 && second == 0x64;
            boolean wrapped = first == 0x20 && second == 0x02;
            boolean compatible = first == 0 && second == 0;
            boolean documentation = first == 0x20 && second == 0x01 && (bytes[2] & 0xff) <= 0x0d;
            return unique || translated || wrapped || compatible || documentation && special(bytes);
        }
        return first == 0
                || first == 100 && second >= 64 && second < 128
                || first == 192 && second == 0 && bytes[2] == 0
                || first == 198 && (second == 18 || second == 19)
                || first >= 240;
    }

    /** 2001::/23 for special purposes, Teredo among them, and 2001:db8::/32 for documentation. */
    private static boolean special(byte[] bytes) {
        int third = bytes[2] & 0xff;
        int fourth = bytes[3] & 0xff;
        return third <= 0x01 || third == 0x0d && fourth == 0xb8;
    }
}
