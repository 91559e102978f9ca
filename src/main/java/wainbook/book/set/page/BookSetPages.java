package wainbook.book.set.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import wainbook.page.Filled;

/** The pages of this room's set. */
@CheckedTemplate(basePath = "book", defaultName = CheckedTemplate.ELEMENT_NAME)
final class BookSetPages {

    private BookSetPages() {}

    static native TemplateInstance book(Filled filled, BookView view);
}
