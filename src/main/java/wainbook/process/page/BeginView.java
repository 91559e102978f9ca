package wainbook.process.page;

import java.util.List;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.process.draft.About.Thing;

/** The form by which a new sheet, route or plan is begun: as a copy of one in force. */
public record BeginView(Thing thing, List<Option> models, Filled filled) {

    public String title() {
        return Words.of("process.begin." + thing);
    }

    public String path() {
        return "/process/" + thing.word() + "/new";
    }
}
