package wainbook.waste.page;

import java.util.List;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.waste.Thing;

/** One thing with what can be said of it. */
public record ThingView(StripView strip, ThingLine line, Filled filled) {

    public Thing thing() {
        return line.thing();
    }

    public List<Option> fates() {
        return StripView.fateOptions();
    }

    public boolean open() {
        return thing().container().isEmpty() && thing().said().left().isEmpty();
    }

    public boolean tests() {
        return open() && thing().fate().stays();
    }

    public boolean gives() {
        return open() && !thing().fate().waste();
    }

    public List<Option> findings() {
        return List.of(new Option("yes", Words.of("waste.fitYes")), new Option("no", Words.of("waste.fitNo")));
    }
}
