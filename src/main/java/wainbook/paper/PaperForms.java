package wainbook.paper;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.paper.PaperSaying.FormsPrinted;
import wainbook.paper.PaperSaying.OfForm;
import wainbook.paper.PaperSaying.Transcribed;

/** Every form that was ever printed, by its number from 1. */
public record PaperForms(Map<Integer, PaperForm> byNumber) {

    public PaperForms {
        byNumber = Collections.unmodifiableMap(new TreeMap<>(byNumber));
    }

    public static PaperForms of(History works) {
        return works.folded(PaperForms.class, new PaperForms(Map.of()), PaperForms::and);
    }

    public Optional<PaperForm> number(int number) {
        return Optional.ofNullable(byNumber.get(number));
    }

    /** By what stands on the paper, with or without its letter. */
    public Optional<PaperForm> code(String code) {
        return code.strip().matches("(?i)(F-)?0*[1-9]\\d{0,8}")
                ? number(Integer.parseInt(code.strip().replaceAll("\\D", "")))
                : Optional.empty();
    }

    /** Oldest first. */
    public List<PaperForm> all() {
        return List.copyOf(byNumber.values());
    }

    public int next() {
        return byNumber.keySet().stream().mapToInt(Integer::intValue).max().orElse(0) + 1;
    }

    /** The other form that was typed in with the same photograph. */
    Optional<PaperForm> with(EvidenceFile photograph, int besides) {
        return byNumber.values().stream()
                .filter(form -> form.number() != besides)
                .filter(form -> form.transcribed().stream()
                        .anyMatch(entry -> ((Transcribed) entry.saying())
                                .photograph()
                                .sha256()
                                .equals(photograph.sha256())))
                .findFirst();
    }

    private PaperForms and(Entry entry) {
        if (entry.saying() instanceof FormsPrinted printed) {
            var more = new TreeMap<>(byNumber);
            for (int number = printed.first(); number < printed.first() + printed.count(); number++) {
                more.put(number, PaperForm.printed(number, entry));
            }
            return new PaperForms(more);
        }
        if (!(entry.saying() instanceof OfForm said)) {
            return this;
        }
        var more = new TreeMap<>(byNumber);
        more.computeIfPresent(said.form(), (number, form) -> form.and(entry));
        return new PaperForms(more);
    }
}
