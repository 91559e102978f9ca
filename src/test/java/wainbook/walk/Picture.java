package wainbook.walk;

import java.nio.charset.StandardCharsets;
import java.util.Base64;

/** A photograph of one grey point, and a report without a word. */
final class Picture {

    static final byte[] PNG = Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGOoBwAAgQCBKNfC2QAAAABJRU5ErkJggg==");

    static final byte[] PDF = "%PDF-1.4\n%%EOF\n".getBytes(StandardCharsets.US_ASCII);

    static boolean isPhotograph(String item) {
        return item.equals("labels");
    }

    private Picture() {}
}
