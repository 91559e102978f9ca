package wainbook.works.signin;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashSet;
import wainbook.page.Frame;
import wainbook.works.PersonName;
import wainbook.works.PersonRow;

/** From a person's number to what the person may do now. Read at every request, so that leaving takes effect at once. */
@ApplicationScoped
class Identities {

    SecurityIdentity of(String person) {
        PersonRow row = QuarkusTransaction.joiningExisting()
                .call(() -> PersonRow.<PersonRow>findByIdOptional(person)
                        .filter(known -> !known.hasLeft)
                        .orElseThrow(() -> new AuthenticationFailedException("may not sign in: " + person)));
        return QuarkusSecurityIdentity.builder()
                .setPrincipal(new QuarkusPrincipal(row.number))
                .addRoles(new HashSet<>(row.roleWords()))
                .addAttribute(Frame.NAME, name(row.number))
                .build();
    }

    private static String name(String person) {
        return QuarkusTransaction.joiningExisting()
                .call(() -> PersonName.of(person).map(known -> known.fullName).orElse(person));
    }
}
