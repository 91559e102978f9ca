package wainbook.book.chapter;

import java.util.List;
import wainbook.book.print.Block.Fact;
import wainbook.book.print.Chapter;
import wainbook.book.print.Manuscript;
import wainbook.page.Words;

/** How anybody proves, without this program, that nothing was changed. */
final class ProofChapter {

    /** Tested as it stands here. */
    static final String TEN_LINES = """
            import hashlib, json
            before, number = "0" * 64, 0
            for line in open("ledger.ndjson", "rb"):
                line, number = line.rstrip(b"\\n"), number + 1
                entry = json.loads(line)
                assert entry["number"] == str(number), number
                assert entry["previous"] == before, number
                before = hashlib.sha256(line).hexdigest()
            print(number, before)
            """;

    private ProofChapter() {}

    static Chapter of(Material material) {
        return new Manuscript("proof", Words.of("printed.proof"))
                .text(Words.of("printed.proofIntro"))
                .facts(List.of(
                        Front.fact("printed.stream", material.stored().subject().toString(), "fixed"),
                        Front.fact(
                                "printed.entries",
                                String.valueOf(material.stored().number()),
                                ""),
                        Front.fact("printed.fingerprint", material.stored().hash(), "fixed wrap")))
                .part("verify", Words.of("printed.verify"))
                .text(Words.of("printed.verifyText"))
                .fixed(TEN_LINES)
                .text(Words.of(
                        "printed.verifyAnswer",
                        material.stored().number(),
                        material.stored().hash()))
                .part("clock", Words.of("printed.clock"))
                .text(Words.of("printed.clockText", material.formats().zone().getId()))
                .part("files", Words.of("printed.files"))
                .facts(files())
                .part("limits", Words.of("printed.cannot"))
                .text(Words.of("printed.cannotText"))
                .end();
    }

    private static List<Fact> files() {
        return List.of(
                new Fact(Attachments.LEDGER, Words.of("printed.fileLedger"), ""),
                new Fact(Attachments.FORMAT, Words.of("printed.fileFormat"), ""),
                new Fact(Attachments.MANIFEST, Words.of("printed.fileManifest"), ""));
    }
}
