package wainbook.works.signin;

import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.TrustedAuthenticationRequest;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;

/** A person who carries a session cookie of ours. */
@ApplicationScoped
class KnownPerson implements IdentityProvider<TrustedAuthenticationRequest> {

    private final Identities identities;

    KnownPerson(Identities identities) {
        this.identities = identities;
    }

    @Override
    public Class<TrustedAuthenticationRequest> getRequestType() {
        return TrustedAuthenticationRequest.class;
    }

    @Override
    public Uni<SecurityIdentity> authenticate(
            TrustedAuthenticationRequest request, AuthenticationRequestContext context) {
        return context.runBlocking(() -> identities.of(request.getPrincipal()));
    }
}
