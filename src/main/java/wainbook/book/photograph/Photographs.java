package wainbook.book.photograph;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wainbook.book.EntryLine;
import wainbook.book.VehicleRecord;
import wainbook.handover.record.RecordSaying;
import wainbook.ledger.History;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.page.Words;
import wainbook.waste.WasteSaying.EngineMadeUnusable;

/** The photographs of one vehicle's record, in its order, and which of them a set can carry. */
public record Photographs(List<Photograph> all) {

    /** A set is one file in the works' evidence and in a browser's download, so its photographs have a bound: 96 MiB. */
    public static final long MOST_BYTES = 96L << 20;

    public Photographs {
        all = List.copyOf(all);
    }

    /** How many there are, and their bytes. */
    public record Sum(int count, long bytes) {
        static Sum of(List<EvidenceFile> files) {
            return new Sum(
                    files.size(),
                    files.stream().mapToLong(EvidenceFile::sizeBytes).sum());
        }
    }

    /** Megabytes to a tenth, in words where it is less. */
    public static String megabytes(long bytes) {
        BigDecimal tenths = BigDecimal.valueOf(bytes).movePointLeft(6).setScale(1, RoundingMode.HALF_UP);
        return tenths.signum() == 0 ? Words.of("printed.lessThanATenth") : tenths.toPlainString();
    }

    /** @param record the same history in words */
    public static Photographs of(History history, VehicleRecord record) {
        return of(history, record, MOST_BYTES);
    }

    static Photographs of(History history, VehicleRecord record, long mostBytes) {
        Map<Long, EntryLine> lines = new HashMap<>();
        record.folds().stream().flatMap(fold -> fold.lines().stream()).forEach(line -> lines.put(line.number(), line));
        List<Pointed> pointed = Pointed.in(history).toList();
        Set<Pointed> carried = carried(pointed, mostBytes);
        return new Photographs(pointed.stream()
                .map(one -> photograph(
                        one, Optional.ofNullable(lines.get(one.entry().number())), carried.contains(one)))
                .toList());
    }

    /** What a set of this record carries and leaves, without its words. */
    public static Sum sum(History history) {
        return Sum.of(Pointed.in(history).map(Pointed::file).toList());
    }

    public List<Photograph> carried() {
        return all.stream().filter(Photograph::carried).toList();
    }

    public Sum left() {
        return Sum.of(
                all.stream().filter(one -> !one.carried()).map(Photograph::file).toList());
    }

    public Optional<Photograph> of(long entry, String sha256) {
        return all.stream()
                .filter(one -> one.entry() == entry && one.file().sha256().equals(sha256))
                .findFirst();
    }

    /** First what the vehicle was given over as and what proves its engine's end, then the others, the oldest first. */
    private static Set<Pointed> carried(List<Pointed> pointed, long mostBytes) {
        Set<Pointed> carried = new HashSet<>();
        long bytes = 0;
        for (Pointed one : pointed.stream()
                .sorted(Comparator.comparingInt(Photographs::rank))
                .toList()) {
            if (bytes + one.file().sizeBytes() <= mostBytes) {
                bytes += one.file().sizeBytes();
                carried.add(one);
            }
        }
        return carried;
    }

    private static int rank(Pointed one) {
        boolean first =
                one.entry().saying() instanceof RecordSaying || one.entry().saying() instanceof EngineMadeUnusable;
        return first ? 0 : 1;
    }

    private static Photograph photograph(Pointed one, Optional<EntryLine> line, boolean carried) {
        String told = line.map(known -> shows(known, one.file())).orElse("");
        return new Photograph(
                one.entry().number(),
                one.entry().moment().at(),
                Words.find("printed.pictured." + one.part())
                        .map(part -> Words.of("printed.saidAndValue", told, part))
                        .orElse(told),
                line.filter(EntryLine::corrected).isEmpty(),
                one.file(),
                carried);
    }

    /** A line that tells nothing but the file has said enough with its title. */
    private static String shows(EntryLine line, EvidenceFile file) {
        boolean onlyFile =
                line.value().isEmpty() || line.value().contains(file.sha256().substring(0, 8));
        return onlyFile ? line.what() : Words.of("printed.saidAndValue", line.what(), line.value());
    }
}
