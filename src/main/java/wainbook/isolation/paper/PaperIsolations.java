package wainbook.isolation.paper;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.isolation.paper.OnPaperSaying.OnPaper;
import wainbook.isolation.paper.OnPaperSaying.PaperEnded;
import wainbook.isolation.paper.OnPaperSaying.PaperInUse;
import wainbook.ledger.Entry;
import wainbook.ledger.History;

/** The isolations of one vehicle that were kept on paper, by form, and which forms are in use as far as anybody said. */
public record PaperIsolations(Map<String, Standing> byForm) {

    /**
     * One form.
     *
     * @param written as it was taken over last
     */
    public record Standing(boolean open, Optional<OnPaper> written) {}

    public PaperIsolations {
        byForm = Map.copyOf(byForm);
    }

    public static PaperIsolations of(History vehicle) {
        return vehicle.folded(PaperIsolations.class, new PaperIsolations(Map.of()), PaperIsolations::and);
    }

    /**
     * Forms that may have locks hanging by them: nobody moves or energises the vehicle, or begins another isolation, until they
     * are typed in to their end.
     */
    public List<String> open() {
        return byForm.entrySet().stream()
                .filter(form -> form.getValue().open())
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
    }

    public List<OnPaper> written() {
        return byForm.values().stream().flatMap(form -> form.written().stream()).toList();
    }

    private PaperIsolations and(Entry entry) {
        if (!(entry.saying() instanceof OnPaperSaying said)) {
            return this;
        }
        Optional<OnPaper> before = Optional.ofNullable(byForm.get(said.form())).flatMap(Standing::written);
        var next = new LinkedHashMap<>(byForm);
        next.put(said.form(), after(said, before));
        return new PaperIsolations(next);
    }

    private static Standing after(OnPaperSaying said, Optional<OnPaper> before) {
        if (said instanceof PaperInUse) {
            return new Standing(true, before);
        }
        return said instanceof PaperEnded
                ? new Standing(false, before)
                : new Standing(!((OnPaper) said).closed(), Optional.of((OnPaper) said));
    }
}
