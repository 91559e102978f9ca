package wainbook.print;

import java.util.List;

/**
 * One document to be printed.
 *
 * @param body what stands between the body's tags: well-formed XHTML with no form fields; headings that carry an {@code id}
 *     become the document's outline, first level and second; every {@code img} and {@code svg} has an {@code alt}
 */
public record PdfPage(String body, Heading heading, List<Attachment> attachments) {
    public PdfPage {
        attachments = List.copyOf(attachments);
        if (attachments.stream().map(Attachment::name).distinct().count() != attachments.size()) {
            throw new IllegalArgumentException("two attachments of one name");
        }
    }
}
