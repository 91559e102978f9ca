package wainbook.works.signin;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.UsernamePasswordAuthenticationRequest;
import io.quarkus.vertx.http.runtime.security.HttpSecurityUtils;
import io.smallrye.mutiny.Uni;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.Optional;

/** A person who types name and password into the form, or a script that sends them. */
@ApplicationScoped
class PersonWithPassword implements IdentityProvider<UsernamePasswordAuthenticationRequest> {

    private final Credentials credentials;
    private final Identities identities;
    private final Throttle throttle;

    PersonWithPassword(Credentials credentials, Identities identities, Throttle throttle) {
        this.credentials = credentials;
        this.identities = identities;
        this.throttle = throttle;
    }

    @Override
    public Class<UsernamePasswordAuthenticationRequest> getRequestType() {
        return UsernamePasswordAuthenticationRequest.class;
    }

    @Override
    public Uni<SecurityIdentity> authenticate(
            UsernamePasswordAuthenticationRequest request, AuthenticationRequestContext context) {
        Optional<RoutingContext> web = Optional.ofNullable(HttpSecurityUtils.getRoutingContextAttribute(request));
        String address = web.map(routing -> routing.request().remoteAddress().hostAddress())
                .orElse("none");
        String password = new String(request.getPassword().getPassword());
        return context.runBlocking(() -> {
            Duration wait = throttle.wait(request.getUsername(), address);
            if (!wait.isZero()) {
                web.ifPresent(routing -> routing.response().putHeader("Retry-After", "" + (wait.toSeconds() + 1)));
                throw new AuthenticationFailedException("too many tries");
            }
            Optional<String> person = credentials.person(request.getUsername(), password);
            if (person.isEmpty()) {
                throttle.failed(request.getUsername(), address);
                throw new AuthenticationFailedException("name or password not right");
            }
            throttle.passed(request.getUsername());
            return identities.of(person.get());
        });
    }
}
