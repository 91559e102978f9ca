package wainbook.page.live;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.IdentityProviderManager;
import io.quarkus.security.identity.request.TrustedAuthenticationRequest;
import io.quarkus.vertx.http.runtime.security.PersistentLoginManager;
import io.quarkus.vertx.http.runtime.security.QuarkusHttpUser;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Whether a session that was there when somebody began to listen is there still, as the next request would find it. */
@ApplicationScoped
class Sessions {

    private final IdentityProviderManager identities;
    private final PersistentLoginManager cookies;

    Sessions(
            IdentityProviderManager identities,
            @ConfigProperty(name = "quarkus.http.auth.session.encryption-key") String key,
            @ConfigProperty(name = "quarkus.http.auth.form.cookie-name") String cookie,
            @ConfigProperty(name = "quarkus.http.auth.form.timeout") Duration timeout,
            @ConfigProperty(name = "quarkus.http.auth.form.new-cookie-interval") Duration renewal) {
        this.identities = identities;
        this.cookies = new PersistentLoginManager(
                key, cookie, timeout.toMillis(), renewal.toMillis(), true, "LAX", "/", -1, null);
    }

    Session of(RoutingContext web) {
        return new Session(
                this,
                ((QuarkusHttpUser) web.user())
                        .getSecurityIdentity()
                        .getPrincipal()
                        .getName(),
                web);
    }

    /** The session of one request. */
    record Session(Sessions sessions, String person, RoutingContext web) {

        /** Whether its time is not over. */
        boolean lasts() {
            return sessions.cookies.restore(web) != null;
        }

        /** Whether the person may still sign in. */
        boolean admitted() {
            try {
                return !sessions.identities
                        .authenticateBlocking(new TrustedAuthenticationRequest(person))
                        .isAnonymous();
            } catch (AuthenticationFailedException gone) {
                return false;
            }
        }
    }
}
