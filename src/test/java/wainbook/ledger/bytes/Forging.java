package wainbook.ledger.bytes;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import wainbook.ledger.Subject;
import wainbook.ledger.bytes.StoredLedger.File;
import wainbook.ledger.bytes.StoredLedger.Row;
import wainbook.ledger.bytes.StoredLedger.Stream;

/** What somebody who can write to the database might do to it, one change at a time. */
enum Forging {
    STREAM_ID((ledger, random) -> ledger.ends(
            random, end -> new Stream(uuid(random), end.subject(), end.lastNumber(), end.lastHash(), end.lastAt()))),
    STREAM_SUBJECT((ledger, random) -> ledger.ends(
            random,
            end -> new Stream(
                    end.id(), flipped(end.subject(), random), end.lastNumber(), end.lastHash(), end.lastAt()))),
    LAST_NUMBER((ledger, random) -> ledger.ends(
            random,
            end -> new Stream(
                    end.id(), end.subject(), end.lastNumber() + random.nextInt(5) - 2, end.lastHash(), end.lastAt()))),
    LAST_HASH((ledger, random) -> ledger.ends(
            random,
            end -> new Stream(
                    end.id(), end.subject(), end.lastNumber(), flipped(end.lastHash(), random), end.lastAt()))),
    LAST_TIME((ledger, random) -> ledger.ends(
            random,
            end -> new Stream(end.id(), end.subject(), end.lastNumber(), end.lastHash(), later(end.lastAt(), random)))),
    END_DELETED((ledger, random) -> ledger.streams.remove(random.nextInt(ledger.streams.size()))),
    EMPTY_STREAM((ledger, random) -> {
        Subject subject = Subject.person("9" + random.nextInt(1000));
        ledger.streams.add(new Stream(
                subject.stream().toString(), subject.toString(), 0, Said.NOTHING, "2026-03-02T06:00:00.000000Z"));
    }),
    SUBJECTS_EXCHANGED((ledger, random) -> {
        Stream one = ledger.streams.remove(random.nextInt(ledger.streams.size()));
        Stream other = ledger.streams.remove(random.nextInt(ledger.streams.size()));
        ledger.streams.add(new Stream(one.id(), other.subject(), one.lastNumber(), one.lastHash(), one.lastAt()));
        ledger.streams.add(new Stream(other.id(), one.subject(), other.lastNumber(), other.lastHash(), other.lastAt()));
    }),
    ENTRY_ID((ledger, random) -> ledger.rows(
            random, row -> new Row(uuid(random), row.stream(), row.number(), row.kind(), row.said(), row.hash()))),
    ENTRY_STREAM((ledger, random) -> ledger.rows(
            random,
            row -> new Row(
                    row.id(),
                    ledger.streams.get(random.nextInt(ledger.streams.size())).id(),
                    row.number(),
                    row.kind(),
                    row.said(),
                    row.hash()))),
    ENTRY_IN_NO_STREAM((ledger, random) -> ledger.rows(
            random, row -> new Row(row.id(), uuid(random), row.number(), row.kind(), row.said(), row.hash()))),
    ENTRY_NUMBER((ledger, random) -> ledger.rows(
            random, row -> new Row(row.id(), row.stream(), 1 + random.nextInt(6), row.kind(), row.said(), row.hash()))),
    ENTRY_KIND((ledger, random) -> ledger.rows(
            random,
            row -> new Row(row.id(), row.stream(), row.number(), flipped(row.kind(), random), row.said(), row.hash()))),
    ENTRY_TEXT((ledger, random) -> ledger.rows(
            random,
            row -> new Row(row.id(), row.stream(), row.number(), row.kind(), flipped(row.said(), random), row.hash()))),
    ENTRY_HASH((ledger, random) -> ledger.rows(
            random,
            row -> new Row(row.id(), row.stream(), row.number(), row.kind(), row.said(), flipped(row.hash(), random)))),
    ENTRY_DELETED((ledger, random) -> ledger.rows.remove(random.nextInt(ledger.rows.size()))),
    FIRST_ENTRY_DELETED((ledger, random) -> ledger.rows.remove(ledger.row(random, row -> row.number() == 1))),
    LAST_ENTRY_DELETED((ledger, random) -> ledger.rows.remove(ledger.row(
            random,
            row -> ledger.streams.stream().anyMatch(end -> end.lastHash().equals(row.hash()))))),
    ALL_ENTRIES_OF_A_STREAM_DELETED((ledger, random) -> {
        Stream end = ledger.streams.get(random.nextInt(ledger.streams.size()));
        ledger.rows.removeIf(row -> row.stream().equals(end.id()));
        ledger.streams.remove(end);
        ledger.streams.add(new Stream(end.id(), end.subject(), 0, Said.NOTHING, end.lastAt()));
    }),
    COPY_APPENDED((ledger, random) -> {
        Row row = ledger.rows.get(random.nextInt(ledger.rows.size()));
        String id = uuid(random);
        ledger.rows.add(resaid(row, said -> said.put("id", id).put("number", "40"), id, 40));
    }),
    COPY_APPENDED_AND_END_MOVED((ledger, random) -> {
        Stream end = ledger.streams.remove(random.nextInt(ledger.streams.size()));
        Row last = ledger.row(random, row -> row.hash().equals(end.lastHash()));
        String id = uuid(random);
        Row copy = resaid(last, said -> said.put("id", id), id, last.number() + 1);
        ledger.rows.add(copy);
        ledger.streams.add(new Stream(end.id(), end.subject(), end.lastNumber() + 1, copy.hash(), end.lastAt()));
    }),
    NUMBERS_EXCHANGED((ledger, random) -> {
        Row one = ledger.row(random, row -> row.number() > 1);
        Row other = ledger.row(random, row -> row.stream().equals(one.stream()));
        ledger.rows.removeAll(List.of(one, other));
        ledger.rows.add(new Row(one.id(), one.stream(), other.number(), one.kind(), one.said(), one.hash()));
        ledger.rows.add(new Row(other.id(), other.stream(), one.number(), other.kind(), other.said(), other.hash()));
    }),
    TEXTS_EXCHANGED((ledger, random) -> {
        Row one = ledger.row(random, row -> true);
        Row other = ledger.row(random, row -> !row.equals(one));
        ledger.rows.removeAll(List.of(one, other));
        ledger.rows.add(new Row(one.id(), one.stream(), one.number(), one.kind(), other.said(), other.hash()));
        ledger.rows.add(new Row(other.id(), other.stream(), other.number(), other.kind(), one.said(), one.hash()));
    }),
    PREVIOUS_CHANGED_AND_HASHED((ledger, random) -> ledger.rows(
            random,
            row -> resaid(
                    row,
                    said -> said.put("previous", flipped(said.get("previous").textValue(), random))))),
    TIME_CHANGED_AND_HASHED((ledger, random) -> ledger.rows(
            random,
            row -> resaid(row, said -> said.put("at", later(said.get("at").textValue(), random))))),
    PERSON_CHANGED_AND_HASHED((ledger, random) ->
            ledger.rows(random, row -> resaid(row, said -> said.put("who", "1002")))),
    STATION_CHANGED_AND_HASHED((ledger, random) ->
            ledger.rows(random, row -> resaid(row, said -> said.put("station", "S0" + random.nextInt(4))))),
    BODY_CHANGED_AND_HASHED((ledger, random) -> ledger.rows(
            random, row -> resaid(row, said -> said.putObject("body").put("reason", "other")))),
    FIELD_ADDED_AND_HASHED((ledger, random) ->
            ledger.rows(random, row -> resaid(row, said -> said.put("seen", "true")))),
    REWRITTEN_TO_ITS_LAST_ENTRY_BUT_NOT_THE_END((ledger, random) -> {
        Row from = ledger.row(random, row -> true);
        ledger.rewrite(from, said -> said.put("who", "1003"));
    }),
    BLANK_ADDED_AND_ALL_REWRITTEN((ledger, random) -> {
        Stream end = ledger.streams.remove(random.nextInt(ledger.streams.size()));
        Row last = ledger.row(random, row -> row.hash().equals(end.lastHash()));
        String said = last.said().replaceFirst(",", ", ");
        ledger.rows.remove(last);
        ledger.rows.add(new Row(last.id(), last.stream(), last.number(), last.kind(), said, Said.hash(said)));
        ledger.streams.add(new Stream(end.id(), end.subject(), end.lastNumber(), Said.hash(said), end.lastAt()));
    }),
    FILE_FINGERPRINT((ledger, random) -> ledger.files(
            random,
            file -> new File(flipped(file.sha256(), random), file.mediaType(), file.sizeBytes(), file.content()))),
    FILE_TYPE((ledger, random) -> ledger.files(
            random,
            file -> new File(file.sha256(), flipped(file.mediaType(), random), file.sizeBytes(), file.content()))),
    FILE_SIZE((ledger, random) -> ledger.files(
            random,
            file -> new File(
                    file.sha256(), file.mediaType(), file.sizeBytes() + random.nextInt(5) - 2, file.content()))),
    FILE_BYTE((ledger, random) -> ledger.files(random, file -> {
        byte[] bytes = file.bytes();
        bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        return new File(file.sha256(), file.mediaType(), file.sizeBytes(), base64(bytes));
    })),
    FILE_CUT_SHORT((ledger, random) -> ledger.files(random, file -> {
        byte[] bytes = Arrays.copyOf(file.bytes(), random.nextInt(file.bytes().length));
        return new File(file.sha256(), file.mediaType(), bytes.length, base64(bytes));
    })),
    FILE_EXCHANGED((ledger, random) -> ledger.files(random, file -> {
        byte[] bytes = ("another " + random.nextInt()).getBytes(StandardCharsets.UTF_8);
        return new File(Said.sha256(bytes), file.mediaType(), bytes.length, base64(bytes));
    })),
    FILE_DELETED((ledger, random) -> ledger.files.remove(random.nextInt(ledger.files.size())));

    /** A ledger's rows while they are being forged. */
    static final class Open {
        final List<Stream> streams;
        final List<Row> rows;
        final List<File> files;

        Open(StoredLedger ledger) {
            streams = new ArrayList<>(ledger.stream());
            rows = new ArrayList<>(ledger.entry());
            files = new ArrayList<>(ledger.evidence());
        }

        StoredLedger close() {
            return new StoredLedger(streams, rows, files);
        }

        void ends(Random random, UnaryOperator<Stream> change) {
            change(streams, random.nextInt(streams.size()), change);
        }

        void rows(Random random, UnaryOperator<Row> change) {
            change(rows, random.nextInt(rows.size()), change);
        }

        void files(Random random, UnaryOperator<File> change) {
            change(files, random.nextInt(files.size()), change);
        }

        Row row(Random random, Predicate<Row> which) {
            List<Row> among = rows.stream().filter(which).toList();
            return among.get(random.nextInt(among.size()));
        }

        /** Changes an entry and makes all that follow fit; gives the new last entry. */
        Row rewrite(Row from, Consumer<ObjectNode> change) {
            Row last = resaid(from, change);
            change(rows, rows.indexOf(from), row -> resaid(from, change));
            for (long number = from.number() + 1; ; number++) {
                long next = number;
                String previous = last.hash();
                List<Row> following = rows.stream()
                        .filter(row -> row.stream().equals(from.stream()) && row.number() == next)
                        .toList();
                if (following.isEmpty()) {
                    return last;
                }
                last = resaid(following.get(0), said -> said.put("previous", previous));
                rows.set(rows.indexOf(following.get(0)), last);
            }
        }

        private static <T> void change(List<T> list, int index, UnaryOperator<T> change) {
            list.set(index, change.apply(list.get(index)));
        }
    }

    @FunctionalInterface
    private interface Change {
        void on(Open ledger, Random random);
    }

    @SuppressWarnings("ImmutableEnumChecker")
    private final Change change;

    Forging(Change change) {
        this.change = change;
    }

    /** Draws until something is another than before and the tables can hold it. */
    StoredLedger of(StoredLedger sound, Random random) {
        for (int tries = 0; tries < 1000; tries++) {
            var open = new Open(sound);
            change.on(open, random);
            StoredLedger forged = open.close();
            boolean changed = !sound.stream().containsAll(forged.stream())
                    || !sound.entry().containsAll(forged.entry())
                    || !sound.evidence().containsAll(forged.evidence())
                    || forged.stream().size() != sound.stream().size()
                    || forged.entry().size() != sound.entry().size()
                    || forged.evidence().size() != sound.evidence().size();
            if (changed && forged.canBeStored()) {
                return forged;
            }
        }
        throw new AssertionError(this + " changes nothing");
    }

    /** Says something else in an entry, with the hash that belongs to it. */
    static Row resaid(Row row, Consumer<ObjectNode> change) {
        return resaid(row, change, row.id(), row.number());
    }

    private static Row resaid(Row row, Consumer<ObjectNode> change, String id, long number) {
        try {
            var said = (ObjectNode) new ObjectMapper().readTree(row.said());
            change.accept(said);
            String text = SecondVerifier.canonical(said);
            String hash = SecondVerifier.sha256(text.getBytes(StandardCharsets.UTF_8));
            return new Row(id, row.stream(), number, row.kind(), text, hash);
        } catch (JsonProcessingException cannotBe) {
            throw new IllegalArgumentException(cannotBe);
        }
    }

    private static String flipped(String text, Random random) {
        String letters = "0123456789abcdef\"{}:, ZΩ";
        int at = random.nextInt(text.length());
        return text.substring(0, at) + letters.charAt(random.nextInt(letters.length())) + text.substring(at + 1);
    }

    private static String later(String time, Random random) {
        return Scalars.time(Instant.parse(time).plusNanos(1_000L * (random.nextInt(5) - 2)));
    }

    private static String uuid(Random random) {
        return new UUID(random.nextLong(), random.nextLong()).toString();
    }

    private static String base64(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes);
    }
}
