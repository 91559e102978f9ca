package wainbook.handover.issue;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.handover.HandoverLook;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;
import wainbook.works.Person;

/** Brings together what issuing a document is judged from. */
@ApplicationScoped
public class IssueLook {

    private final Ledger ledger;
    private final Templates templates;
    private final Figures figures;
    private final HandoverLook handover;

    IssueLook(Ledger ledger, Templates templates, Figures figures, HandoverLook handover) {
        this.ledger = ledger;
        this.templates = templates;
        this.figures = figures;
        this.handover = handover;
    }

    /** The rules of every document for the person of the moment; empty where there is no such order. */
    public List<IssueRules> all(History history, Moment moment) {
        return WorkOrder.of(history).stream()
                .flatMap(order -> {
                    Map<String, Object> known = figures.of(history, order, moment.at());
                    return templates.all().stream().map(template -> rules(order, template, known, moment));
                })
                .toList();
    }

    public Optional<IssueRules> one(History history, String document, Moment moment) {
        return WorkOrder.of(history)
                .flatMap(order -> templates
                        .named(document)
                        .map(template -> rules(order, template, figures.of(history, order, moment.at()), moment)));
    }

    /** As it would read. */
    public Outcome<String> shown(IssueRules rules) {
        return Filling.html(rules.template().text(), rules.figures());
    }

    private IssueRules rules(WorkOrder order, Template template, Map<String, Object> known, Moment moment) {
        return new IssueRules(
                order.number(),
                template,
                known,
                Person.of(ledger.history(Subject.person(moment.who()))),
                handover.today(moment.at()));
    }
}
