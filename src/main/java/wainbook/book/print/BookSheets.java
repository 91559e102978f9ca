package wainbook.book.print;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The templates of a build book. They are XHTML, since they are printed too. */
@CheckedTemplate(basePath = "book/print", defaultName = CheckedTemplate.ELEMENT_NAME)
final class BookSheets {

    private BookSheets() {}

    static native TemplateInstance book(Book book);

    static native TemplateInstance divider(String running, Chapter chapter);

    static native TemplateInstance leaf(Book book, Chapter chapter, boolean first);
}
