package wainbook.book.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.book.print.Block.Fact;
import wainbook.book.print.Block.Kind;
import wainbook.page.RouteBar;

/** A chapter as it is written. */
public final class Manuscript {

    private final String key;
    private final String title;
    private final List<Block> blocks = new ArrayList<>();

    public Manuscript(String key, String title) {
        this.key = key;
        this.title = title;
    }

    /** A part of the chapter that the outline lists. */
    public Manuscript part(String id, String text) {
        return add(Block.said(Kind.PART, key + "-" + id, text));
    }

    public Manuscript lesser(String text) {
        return add(Block.said(Kind.LESSER, "", text));
    }

    public Manuscript text(String text) {
        return add(Block.said(Kind.TEXT, "", text));
    }

    public Manuscript quiet(String text) {
        return add(Block.said(Kind.QUIET, "", text));
    }

    public Manuscript caution(String text) {
        return add(Block.said(Kind.CAUTION, "", text));
    }

    public Manuscript fixed(String text) {
        return add(Block.said(Kind.FIXED, "", text));
    }

    public Manuscript facts(List<Fact> facts) {
        return facts.isEmpty() ? this : add(new Block(Kind.FACTS, "", "", facts, Optional.empty(), Optional.empty()));
    }

    public Manuscript list(List<String> texts) {
        return add(new Block(
                Kind.LIST,
                "",
                "",
                texts.stream().map(text -> new Fact("", text, "")).toList(),
                Optional.empty(),
                Optional.empty()));
    }

    /** Links by their names. */
    public Manuscript links(List<Fact> links) {
        return add(new Block(Kind.LINKS, "", "", links, Optional.empty(), Optional.empty()));
    }

    public Manuscript bar(RouteBar bar) {
        return add(new Block(Kind.BAR, "", "", List.of(), Optional.empty(), Optional.of(bar)));
    }

    /** A table, or the sentence that there is nothing to stand in it. */
    public Manuscript grid(Grid grid, String none) {
        return grid.rows().isEmpty()
                ? quiet(none)
                : add(new Block(Kind.GRID, "", "", List.of(), Optional.of(grid), Optional.empty()));
    }

    public Chapter end() {
        return new Chapter(key, title, blocks);
    }

    private Manuscript add(Block block) {
        blocks.add(block);
        return this;
    }
}
