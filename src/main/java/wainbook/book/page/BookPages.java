package wainbook.book.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages of this room. */
@CheckedTemplate(basePath = "book", defaultName = CheckedTemplate.ELEMENT_NAME)
final class BookPages {

    private BookPages() {}

    static native TemplateInstance vehicle(Vehicle vehicle);
}
