package wainbook.safety.page;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wainbook.act.Moment;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.permit.PermitRow;
import wainbook.permit.Work;
import wainbook.safety.page.view.EnteringView;
import wainbook.safety.page.view.InductionView;
import wainbook.safety.page.view.VisitLine;
import wainbook.safety.page.view.VisitorsView;
import wainbook.safety.visit.Visit;
import wainbook.safety.visit.Visiting;
import wainbook.safety.visit.Visitor;
import wainbook.safety.visit.VisitorName;
import wainbook.safety.visit.Visits;

/** Reads visits for whoever looks at them. */
@ApplicationScoped
public class VisitLook {

    private static final int EARLIER = 200;

    private final Ledger ledger;
    private final Visiting visiting;

    VisitLook(Ledger ledger, Visiting visiting) {
        this.ledger = ledger;
        this.visiting = visiting;
    }

    VisitorsView view(Optional<String> permit, Moment now) {
        Visits visits = visits();
        List<VisitLine> all = visits.all().stream()
                .filter(visit -> permit.isEmpty() || visit.said().permit().equals(permit))
                .map(visit -> line(visits, visit, now))
                .toList();
        return new VisitorsView(
                all.stream().filter(line -> line.visit().inside()).toList(),
                all.stream()
                        .filter(line -> !line.visit().inside())
                        .sorted(Comparator.comparing(
                                        (VisitLine line) -> line.visit().number())
                                .reversed())
                        .limit(EARLIER)
                        .toList(),
                visiting.againstHosting(now),
                permit,
                now);
    }

    private VisitLine line(Visits visits, Visit visit, Moment now) {
        Visitor visitor = visits.visitor(visit.visitor()).orElseThrow();
        return new VisitLine(
                visit,
                VisitorName.called(visitor),
                VisitorName.firm(visitor),
                visit.inside() ? visiting.wrongInWords(visit, now.at()) : List.of());
    }

    Visits visits() {
        return Visits.of(ledger.history(Subject.works()));
    }

    InductionView induction(Filled filled) {
        String number = filled.value("visitor");
        return new InductionView(
                filled,
                number,
                visits().visitor(number).map(VisitorName::called).orElse(""));
    }

    EnteringView entering(Filled filled) {
        return new EnteringView(
                filled,
                visits().visitors().stream()
                        .map(visitor -> new Option(
                                visitor.number(),
                                Words.of(
                                        "safety.visitorInWords",
                                        VisitorName.called(visitor),
                                        VisitorName.firm(visitor),
                                        Formats.date(visitor.validTo()))))
                        .toList(),
                PermitRow.open().stream()
                        .filter(row -> row.sort == Work.CONTRACTOR)
                        .map(row -> new Option(row.id, VisitLine.permit(row.id)))
                        .toList());
    }
}
