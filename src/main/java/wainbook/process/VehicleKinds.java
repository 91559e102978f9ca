package wainbook.process;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;

/** What the works calls each kind of vehicle: a code is for papers, a title for people. */
@Named("kinds")
@ApplicationScoped
public class VehicleKinds {

    private final Releases releases;

    VehicleKinds(Releases releases) {
        this.releases = releases;
    }

    /** The title of the route that vehicles of this kind take; the code where no route takes them any more. */
    public String title(String kind) {
        return releases.routes().stream()
                .filter(route -> route.vehicleKind().equals(kind))
                .findFirst()
                .map(Route::title)
                .orElse(kind);
    }
}
