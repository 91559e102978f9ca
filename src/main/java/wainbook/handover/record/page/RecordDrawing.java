package wainbook.handover.record.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import wainbook.act.Moment;
import wainbook.handover.HandoverLook;
import wainbook.handover.record.RecordLook;
import wainbook.handover.record.RecordRules;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.SignedIn;
import wainbook.works.PersonInWords;
import wainbook.works.PersonRow;
import wainbook.works.Role;

/** Brings together what the pages of a handover record show. */
@ApplicationScoped
class RecordDrawing {

    private final Ledger ledger;
    private final RecordLook look;
    private final HandoverLook handover;
    private final SignedIn signedIn;

    RecordDrawing(Ledger ledger, RecordLook look, HandoverLook handover, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.handover = handover;
        this.signedIn = signedIn;
    }

    RecordView view(String order, Filled filled) {
        History history = ledger.history(Numbers.subject(order));
        Moment now = signedIn.now();
        RecordRules rules = look.at(history, now.at()).orElseThrow(NotFoundException::new);
        return new RecordView(
                rules,
                handover.documents(history, rules.order(), now.at()),
                look.wordlists(),
                people(),
                RecordLook.odometerKm(history, rules.order()),
                look.today(now.at()),
                new RecordView.Doors(
                        is(
                                Role.technician,
                                Role.teamLeader,
                                Role.handoverClerk,
                                Role.lineManager,
                                Role.qualityEngineer),
                        is(Role.handoverClerk, Role.teamLeader, Role.lineManager),
                        signedIn.is(Role.worksEngineer)),
                filled);
    }

    /** How the record’s page is drawn with a form that comes back, or fresh. */
    Function<Filled, TemplateInstance> again(String order) {
        return filled -> RecordPages.record(view(order, filled));
    }

    static String path(String order, String anchor) {
        return "/handover/" + order + "/record" + (anchor.isEmpty() ? "" : "#" + anchor);
    }

    private static List<Option> people() {
        return PersonRow.everybody().stream()
                .filter(row -> !row.hasLeft)
                .map(row -> new Option(row.number, PersonInWords.name(row.number) + ", " + row.number))
                .toList();
    }

    private boolean is(String... roles) {
        return Arrays.stream(roles).anyMatch(signedIn::is);
    }
}
