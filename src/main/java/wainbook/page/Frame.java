package wainbook.page;

import io.quarkus.arc.All;
import io.quarkus.csrf.reactive.runtime.CsrfTokenParameterProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What stands round every page: who is signed in, where they may go, and the token that their forms carry. */
@Named("frame")
@RequestScoped
public class Frame {

    /** The attribute of the signed-in identity that holds the person's name as pages show it. */
    public static final String NAME = "name";

    private final SecurityIdentity identity;
    private final List<Navigation> navigations;
    private final List<Announcement> announcements;
    private final CsrfTokenParameterProvider csrf;
    private final CurrentVertxRequest request;

    Frame(
            SecurityIdentity identity,
            @All List<Navigation> navigations,
            @All List<Announcement> announcements,
            CsrfTokenParameterProvider csrf,
            CurrentVertxRequest request) {
        this.identity = identity;
        this.navigations = navigations;
        this.announcements = announcements;
        this.csrf = csrf;
        this.request = request;
    }

    public Optional<String> person() {
        if (identity.isAnonymous()) {
            return Optional.empty();
        }
        String name = identity.getAttribute(NAME);
        return Optional.of(name == null ? identity.getPrincipal().getName() : name);
    }

    /** The places that the person may see, in their groups. */
    public List<PlaceGroup> groups() {
        return navigations.stream()
                .flatMap(navigation -> navigation.groups().stream())
                .flatMap(group -> group.only(this::maySee).stream())
                .toList();
    }

    /** The group of the page that is drawn, if it has more places than one. */
    public Optional<PlaceGroup> branch() {
        return groups().stream()
                .filter(group -> group.branches() && group.holds(path()))
                .findFirst();
    }

    private boolean maySee(Place place) {
        return place.roles().isEmpty() || place.roles().stream().anyMatch(identity::hasRole);
    }

    /** What every page says for a while. */
    public List<Announcement.Said> announcements() {
        return announcements.stream()
                .filter(each -> !identity.isAnonymous() || each.toStrangers())
                .flatMap(each -> each.said().stream())
                .toList();
    }

    public String path() {
        return request.getCurrent() == null ? "" : request.getCurrent().normalizedPath();
    }

    /** For a form whose page knows nothing of it: the id that its entry will have. */
    public UUID fresh() {
        return UUID.randomUUID();
    }

    public String field() {
        return csrf.getParameterName();
    }

    public String header() {
        return csrf.getHeaderName();
    }

    /** Absent where no form can be sent from: outside a request, or where no resource took it. */
    public Optional<String> token() {
        if (request.getCurrent() == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(csrf.getToken());
        } catch (IllegalStateException e) {
            return Optional.empty();
        }
    }
}
