package wainbook.line.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;
import wainbook.page.Filled;

/** The pages of this room. */
@CheckedTemplate(basePath = "line", defaultName = CheckedTemplate.ELEMENT_NAME)
final class LinePages {

    private LinePages() {}

    static native TemplateInstance line(LineNow line);

    /** The part of the line page that refreshes by itself. */
    static native TemplateInstance stations(LineNow line);

    static native TemplateInstance wall(Wall wall);

    /** The part of the wall screen that refreshes by itself. */
    static native TemplateInstance posts(Wall wall);

    /** The stations, to choose the one where one works. */
    static native TemplateInstance choice(List<LineNow.Row> rows);

    /** A station without a vehicle. */
    static native TemplateInstance nobody(LineNow.Row row);

    static native TemplateInstance move(Filled filled, MoveChoices choices);
}
