package wainbook.bench;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import wainbook.ledger.Entry;
import wainbook.ledger.bytes.Sentences;

/** What it costs to say an entry in canonical JSON and to hash it, beside hashing alone. */
final class WritingASentence {

    private WritingASentence() {}

    static List<Comparison> of(OwnRecord record) {
        return List.of(new Comparison(
                "write the sentences of a whole vehicle and hash them",
                record.entries().size(),
                () -> () -> write(record),
                "SHA-256 of the same bytes",
                () -> () -> hash(record)));
    }

    private static List<String> write(OwnRecord record) {
        var hashes = new ArrayList<String>();
        String previous = record.beginning();
        for (Entry entry : record.entries()) {
            previous = Sentences.hash(Sentences.text(entry, previous));
            hashes.add(previous);
        }
        if (!previous.equals(record.end())) {
            throw new AssertionError("what was written is not what is stored");
        }
        return hashes;
    }

    private static int hash(OwnRecord record) throws Exception {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        int hashed = 0;
        for (String text : record.texts()) {
            hashed += digest.digest(text.getBytes(StandardCharsets.UTF_8)).length;
        }
        return hashed;
    }
}
