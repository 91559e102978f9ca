package wainbook.page;

import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.RequestScoped;
import jakarta.ws.rs.core.HttpHeaders;
import java.time.Clock;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import wainbook.act.Actor;
import wainbook.act.Moment;

/** Who sends this request, as an act needs to know it: the person, what their device's clock says, where it stands. */
@RequestScoped
public class SignedIn {

    /** A script or page may send what its own clock says; rules are never judged by it. */
    static final String DEVICE_TIME = "Wainbook-Device-Time";

    static final String STATION = "Wainbook-Station";

    private final SecurityIdentity identity;
    private final HttpHeaders headers;
    private final Clock clock;

    SignedIn(SecurityIdentity identity, HttpHeaders headers, Clock clock) {
        this.identity = identity;
        this.headers = headers;
        this.clock = clock;
    }

    public Actor actor() {
        return new Actor(
                identity.getPrincipal().getName(),
                header(DEVICE_TIME).flatMap(SignedIn::time),
                header(STATION).filter(station -> station.length() <= 80),
                clock);
    }

    /** For drawing: the moment as it would be if the person acted now. */
    public Moment now() {
        return actor().at(clock.instant());
    }

    public boolean is(String role) {
        return identity.hasRole(role);
    }

    private Optional<String> header(String name) {
        return Optional.ofNullable(headers.getHeaderString(name));
    }

    private static Optional<Instant> time(String text) {
        try {
            return Optional.of(Instant.parse(text));
        } catch (DateTimeParseException unreadable) {
            return Optional.empty();
        }
    }
}
