package wainbook.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Moment;

/**
 * The statement that is hashed: everything about one entry. Field order is irrelevant, the canonical form sorts.
 *
 * @param format {@link #FORMAT}; inside what is hashed, so that no other reading of the same bytes is possible
 * @param previous hash of the entry before in the stream; {@link #NOTHING} for the first
 */
record Said(
        String format,
        UUID id,
        UUID stream,
        String subject,
        long number,
        String kind,
        String who,
        Instant at,
        Optional<Instant> deviceAt,
        Optional<String> station,
        String previous,
        JsonNode body) {

    static final String FORMAT = "wainbook.entry/1";

    static final String NOTHING = "0".repeat(64);

    static Said of(UUID id, Subject subject, long number, String previous, Moment moment, Saying saying) {
        return new Said(
                FORMAT,
                id,
                subject.stream(),
                subject.toString(),
                number,
                Kinds.name(saying.getClass()),
                moment.who(),
                moment.at(),
                moment.deviceAt(),
                moment.station(),
                previous,
                CanonicalJson.tree(Whole.check(saying)));
    }

    /** Reads the stored text; the exception says what is wrong with it. */
    static Said parse(String text) {
        Said said = CanonicalJson.read(CanonicalJson.parse(text), Said.class);
        if (!FORMAT.equals(said.format)) {
            throw new IllegalArgumentException("format is " + said.format + ", not " + FORMAT);
        }
        return said;
    }

    String text() {
        return CanonicalJson.write(this);
    }

    Entry entry(String hash, Kinds kinds) {
        Class<? extends Saying> type =
                kinds.type(kind).orElseThrow(() -> new IllegalArgumentException("kind " + kind + " is not known"));
        return new Entry(
                id,
                Subject.parse(subject),
                number,
                new Moment(who, at, deviceAt, station),
                hash,
                Kinds.newest(CanonicalJson.read(body, type)));
    }

    static String hash(String text) {
        return sha256(text.getBytes(StandardCharsets.UTF_8));
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
