package wainbook.permit.paper;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.permit.PermitSaying.OnPaper;

/** The permits of a vehicle that were written on paper, each as it was taken over last. */
public record PaperPermits(Map<String, Entry> byForm) {

    public PaperPermits {
        byForm = new LinkedHashMap<>(byForm);
    }

    public static PaperPermits of(History stream) {
        return stream.folded(PaperPermits.class, new PaperPermits(Map.of()), PaperPermits::and);
    }

    public List<OnPaper> all() {
        return byForm.values().stream().map(entry -> (OnPaper) entry.saying()).toList();
    }

    public List<OnPaper> open() {
        return all().stream().filter(paper -> paper.written().open()).toList();
    }

    private PaperPermits and(Entry entry) {
        if (!(entry.saying() instanceof OnPaper paper)) {
            return this;
        }
        var more = new LinkedHashMap<>(byForm);
        more.put(paper.form(), entry);
        return new PaperPermits(more);
    }
}
