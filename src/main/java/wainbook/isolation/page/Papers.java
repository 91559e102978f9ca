package wainbook.isolation.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wainbook.isolation.Isolation;
import wainbook.isolation.IsolationSaying.PermitIssued;
import wainbook.isolation.IsolationSaying.SanctionIssued;
import wainbook.isolation.permit.Work;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.page.Words;

/** A paper that is out, as it is shown and printed. */
final class Papers {

    private Papers() {}

    /** The paper that work rests on now. */
    static Optional<IsolationView.Paper> out(History history, Isolation now, Function<String, String> name) {
        if (now.sanction().isPresent()) {
            return history.saying(SanctionIssued.class)
                    .filter(entry -> ((SanctionIssued) entry.saying()).sanction()
                            == now.sanction().get().number())
                    .reduce((former, latter) -> latter)
                    .map(entry -> of((SanctionIssued) entry.saying(), entry, name));
        }
        return now.permit()
                .filter(permit -> !permit.ended())
                .flatMap(permit -> history.saying(PermitIssued.class)
                        .filter(entry -> ((PermitIssued) entry.saying()).permit() == permit.number())
                        .reduce((former, latter) -> latter))
                .map(entry -> of((PermitIssued) entry.saying(), entry, name));
    }

    private static IsolationView.Paper of(PermitIssued said, Entry entry, Function<String, String> name) {
        var rows = rows(said.work());
        rows.add(Words.of("isolating.paperPoints", String.join(", ", said.pointsOfWork())));
        return new IsolationView.Paper(
                Words.of("isolating.permitTitle"),
                said.permit(),
                name.apply(entry.moment().who()),
                name.apply(said.receiver()),
                said.validUntil(),
                rows,
                said.ownIsolation());
    }

    private static IsolationView.Paper of(SanctionIssued said, Entry entry, Function<String, String> name) {
        var rows = rows(said.work());
        rows.add(Words.of("isolating.paperInstrument", said.instrument().code()));
        return new IsolationView.Paper(
                Words.of("isolating.sanctionTitle"),
                said.sanction(),
                name.apply(entry.moment().who()),
                name.apply(said.holder()),
                said.validUntil(),
                rows,
                false);
    }

    private static List<String> rows(Work work) {
        return new ArrayList<>(List.of(
                Words.of("isolating.paperWork", work.what()),
                Words.of("isolating.paperExcluded", work.excluded().isBlank() ? "–" : work.excluded()),
                Words.of("isolating.paperHazards", work.hazards().isBlank() ? "–" : work.hazards())));
    }
}
