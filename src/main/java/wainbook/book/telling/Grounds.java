package wainbook.book.telling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Saying;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.TakenFromPaper;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Used;
import wainbook.station.words.Wanted;

/**
 * What a result stood on at its time, as its entry keeps it.
 *
 * @param used the instrument; empty where the item asks for none
 * @param parts the joint, the limits and the competence, in words
 */
public record Grounds(Optional<Used> used, List<String> parts) {

    private static final Grounds NONE = new Grounds(Optional.empty(), List.of());

    public Grounds {
        parts = List.copyOf(parts);
    }

    /** Who did it when by the paper, who typed it in, and who compared it. */
    static String fromPaper(TakenFromPaper paper, Names names) {
        return Words.of(
                "book.fromPaper",
                paper.form(),
                names.time(paper.doneAt()),
                names.person(paper.doer()),
                names.person(paper.transcribedBy()),
                names.person(paper.comparedBy()));
    }

    /** The same with the paper that it was taken from before all else, where there is one. */
    public Grounds taken(Optional<TakenFromPaper> paper, Names names) {
        if (paper.isEmpty()) {
            return this;
        }
        var more = new ArrayList<String>();
        more.add(fromPaper(paper.get(), names));
        more.addAll(parts);
        return new Grounds(used, more);
    }

    public static Grounds of(Saying saying) {
        if (!(saying instanceof Result result)) {
            return NONE;
        }
        var parts = new ArrayList<String>();
        if (result instanceof Tightened said) {
            var limits = said.torque().limitsNm();
            parts.add(Words.of(
                    "book.byJoint",
                    said.joint(),
                    said.jointClass(),
                    limits.lower().toPlainString(),
                    limits.upper().toPlainString()));
        }
        if (result instanceof Measured said) {
            said.works()
                    .map(limits -> Words.of("station.worksLimit", Wanted.said(limits), said.unit()))
                    .ifPresent(parts::add);
            said.legal()
                    .map(limits -> Words.of(
                            "station.legalLimit",
                            Wanted.said(limits),
                            said.unit(),
                            limits.source().orElse("")))
                    .ifPresent(parts::add);
        }
        result.basis()
                .held()
                .map(held ->
                        Words.of("book.byCompetence", held.competence(), held.level(), Formats.date(held.validTo())))
                .ifPresent(parts::add);
        return new Grounds(result.basis().used(), parts);
    }

    public boolean any() {
        return used.isPresent() || !parts.isEmpty();
    }

    public String due() {
        return used.map(known -> Words.of("book.thenDue", Formats.date(known.due())))
                .orElse("");
    }

    public String words() {
        return String.join("; ", parts);
    }
}
