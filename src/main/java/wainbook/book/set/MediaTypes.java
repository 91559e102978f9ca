package wainbook.book.set;

import java.util.Map;

/** Media types by the endings of file names. */
final class MediaTypes {

    private static final Map<String, String> BY_ENDING = Map.of(
            "html", "text/html",
            "css", "text/css",
            "pdf", "application/pdf",
            "jpg", "image/jpeg",
            "png", "image/png",
            "webp", "image/webp",
            "txt", "text/plain",
            "csv", "text/csv",
            "md", "text/markdown",
            "ndjson", "application/x-ndjson");

    private MediaTypes() {}

    static String of(String name) {
        return BY_ENDING.getOrDefault(name.substring(name.lastIndexOf('.') + 1), "application/octet-stream");
    }
}
