package wainbook.book.print;

import java.util.List;

/**
 * A chapter.
 *
 * @param key of letters and dashes: its address in the document, and its file on a site
 */
public record Chapter(String key, String title, List<Block> blocks) {
    public Chapter {
        blocks = List.copyOf(blocks);
    }

    public String file() {
        return key + ".html";
    }
}
