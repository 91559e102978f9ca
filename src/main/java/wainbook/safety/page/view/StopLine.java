package wainbook.safety.page.view;

import java.util.List;
import wainbook.page.Words;
import wainbook.permit.Where;
import wainbook.safety.stop.Stop;

/** A safety stop as lists and its own page show it. */
public record StopLine(Stop stop, String where) {

    public String path() {
        return stop.path();
    }

    public String title() {
        return Words.of("safety.stopNumber", stop.number());
    }

    public String state() {
        return Words.of(stop.open() ? "safety.stopStands" : "safety.stopLifted");
    }

    public String meaning() {
        return stop.open() ? "danger" : "safe";
    }

    public String sign() {
        return stop.open() ? "stop" : "done";
    }

    /** What stands still for it. */
    public String stops() {
        if (stop.order().isPresent()) {
            return Words.of("safety.stopsVehicle", stop.order().get());
        }
        return Words.of(stop.said().station().isPresent() ? "safety.stopsPlace" : "safety.stopsNothing");
    }

    public String what() {
        return stop.said()
                .words()
                .orElseGet(() -> told().isEmpty()
                        ? Words.of("safety.noWords")
                        : told().get(0).words());
    }

    public List<Told> told() {
        return Told.of(stop.told());
    }

    /** Where the hold of its vehicle is released. */
    public String release() {
        return "/orders/" + stop.order().orElse("") + "/holds/"
                + stop.said().hold().orElse(0) + "/release";
    }

    public List<String> cells() {
        return List.of(
                Where.word(stop.stopped().subject()),
                String.valueOf(stop.number()),
                stop.stopped().moment().at().toString(),
                stop.said().station().orElse(""),
                stop.said().words().orElse(""),
                stop.open() ? "STANDS" : "LIFTED",
                stop.lifted().map(entry -> entry.moment().at().toString()).orElse(""),
                stop.done().orElse(""));
    }
}
