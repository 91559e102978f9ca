package wainbook.rehearsal;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import wainbook.page.Navigation;
import wainbook.page.Place;
import wainbook.page.PlaceGroup;

/** The way to the demonstration's own page, last of all and only where there is one. */
@ApplicationScoped
@Priority(-1)
class DemoPlaces implements Navigation {

    private final ShiftPlay play;

    DemoPlaces(ShiftPlay play) {
        this.play = play;
    }

    @Override
    public List<PlaceGroup> groups() {
        return play.possible() ? List.of(PlaceGroup.of(Place.forEveryone("/demo", "rehearsal.placeDemo"))) : List.of();
    }
}
