package wainbook.book.print;

import java.util.List;
import java.util.Optional;
import wainbook.page.RouteBar;

/**
 * A piece of a chapter. Which of the other fields it has follows from its kind.
 *
 * @param id where the outline or a page points to it; else empty
 */
public record Block(Kind kind, String id, String text, List<Fact> facts, Optional<Grid> grid, Optional<RouteBar> bar) {

    /** What it is. */
    public enum Kind {
        PART,
        LESSER,
        TEXT,
        QUIET,
        CAUTION,
        FIXED,
        FACTS,
        GRID,
        LIST,
        LINKS,
        BAR
    }

    /** Something with its name; of links, the name is where it leads. */
    public record Fact(String name, String text, String look) {}

    public Block {
        facts = List.copyOf(facts);
    }

    static Block said(Kind kind, String id, String text) {
        return new Block(kind, id, text, List.of(), Optional.empty(), Optional.empty());
    }
}
