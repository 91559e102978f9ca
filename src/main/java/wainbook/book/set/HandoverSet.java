package wainbook.book.set;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import wainbook.book.chapter.Attachments;
import wainbook.book.chapter.BuildBook;
import wainbook.book.chapter.BuildBook.Made;
import wainbook.book.chapter.Manifest;
import wainbook.book.chapter.Manifest.Listed;
import wainbook.book.photograph.Photograph;
import wainbook.book.print.Block.Fact;
import wainbook.book.print.Book;
import wainbook.book.print.Chapter;
import wainbook.book.print.Drawn;
import wainbook.book.print.Manuscript;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.page.Words;
import wainbook.print.Bound;
import wainbook.print.Heading;

/** What goes with a vehicle: its book, its documents, its record, in one ZIP that opens without any program of ours. */
@ApplicationScoped
public class HandoverSet {

    private static final String BOOK = "build-book.pdf";
    private static final String MERGED = "handover-set.pdf";

    private final BuildBook buildBook;
    private final EvidenceFiles files;

    HandoverSet(BuildBook buildBook, EvidenceFiles files) {
        this.buildBook = buildBook;
        this.files = files;
    }

    /** A set as bytes, and the end of the record that it was made from. */
    @SuppressWarnings("ArrayRecordComponent") // Nobody compares them.
    public record Packed(byte[] zip, byte[] merged, long upTo, String head) {}

    /** Empty when nothing was ordered under this number. */
    public Optional<Packed> of(String order) {
        return buildBook.of(order).map(made -> packed(made, Papers.of(made.material(), files), files));
    }

    static Packed packed(Made made, List<Papers> papers, EvidenceFiles evidence) {
        byte[] merged = merged(made, papers);
        Map<String, byte[]> within = new LinkedHashMap<>();
        within.put(BOOK, made.pdf());
        within.put(MERGED, merged);
        papers.forEach(paper -> within.put(paper.name(), paper.bytes()));
        made.attachments().stream()
                .filter(file -> !file.name().equals(Attachments.MANIFEST))
                .forEach(file -> within.put(file.name(), file.bytes()));
        Map<String, byte[]> all = new LinkedHashMap<>(Drawn.site(withFiles(made, papers)));
        all.put("book.css", style());
        all.putAll(within);
        List<Photograph> photographs = made.material().photographs().carried();
        all.put(
                Attachments.MANIFEST,
                Manifest.listing(made.material(), listed(all, photographs)).bytes());
        Map<String, Supplier<byte[]>> files = new LinkedHashMap<>();
        all.forEach((name, bytes) -> files.put(name, () -> bytes));
        photographs.forEach(one ->
                files.put(one.name(), () -> evidence.bytes(one.file().sha256()).orElseThrow()));
        var stored = made.material().stored();
        return new Packed(Zipped.of(files), merged, stored.number(), stored.hash());
    }

    /** Photographs are kept by their fingerprints, so none is read to be listed. */
    private static List<Listed> listed(Map<String, byte[]> files, List<Photograph> photographs) {
        return Stream.concat(
                        files.entrySet().stream()
                                .map(file -> Listed.of(file.getKey(), MediaTypes.of(file.getKey()), file.getValue())),
                        photographs.stream().map(Listed::of))
                .toList();
    }

    /** On the site the files of the folder are a chapter of their own. */
    private static Book withFiles(Made made, List<Papers> papers) {
        var links = new ArrayList<Fact>();
        links.add(new Fact(BOOK, Words.of("printed.linkBook"), ""));
        links.add(new Fact(MERGED, Words.of("printed.linkMerged"), ""));
        made.attachments().forEach(file -> links.add(new Fact(file.name(), file.description(), "")));
        var text = new Manuscript("files", Words.of("printed.filesOfSet"))
                .text(Words.of("printed.filesOfSetIntro"))
                .links(links)
                .part("documents", Words.of("printed.documents"));
        return made.book()
                .and(
                        papers.isEmpty()
                                ? text.quiet(Words.of("printed.noPapers")).end()
                                : text.links(papers.stream()
                                                .map(paper -> new Fact(paper.name(), title(paper), ""))
                                                .toList())
                                        .end());
    }

    private static byte[] merged(Made made, List<Papers> papers) {
        var more = new ArrayList<byte[]>();
        for (Papers paper : papers) {
            boolean joins = paper.pdf() && Bound.readable(paper.bytes());
            more.add(Drawn.divider(made.book(), leaf(paper, joins)));
            if (joins) {
                more.add(paper.bytes());
            }
        }
        Heading heading = made.book().heading();
        return Bound.together(
                new Heading(
                        Words.of("printed.setTitle", made.material().number()),
                        heading.about(),
                        heading.language(),
                        heading.at()),
                made.pdf(),
                more,
                made.attachments());
    }

    private static Chapter leaf(Papers paper, boolean joins) {
        return new Manuscript("document", title(paper))
                .facts(List.of(
                        new Fact(Words.of("printed.reference"), paper.reference(), ""),
                        new Fact(Words.of("printed.fileOf"), paper.name(), "fixed"),
                        new Fact(Words.of("printed.fingerprintOf"), paper.file().sha256(), "fixed wrap")))
                .text(Words.of(joins ? "printed.followsHere" : "printed.asFileOnly"))
                .end();
    }

    private static String title(Papers paper) {
        return Words.of("printed.paper", paper.code(), paper.title());
    }

    private static byte[] style() {
        try (InputStream css = HandoverSet.class.getResourceAsStream("/print/book.css")) {
            return css.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
