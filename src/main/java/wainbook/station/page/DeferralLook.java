package wainbook.station.page;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.Numbers;
import wainbook.order.OrderSaying.Place;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.process.Releases;
import wainbook.process.Stage;
import wainbook.station.ItemState;
import wainbook.station.StationSaying.Bar;
import wainbook.station.deferral.Deferral;
import wainbook.station.deferral.DeferralRules;
import wainbook.station.page.DeferralView.Branch;
import wainbook.station.page.DeferralView.Way;
import wainbook.works.Person;
import wainbook.works.PersonName;
import wainbook.works.PersonRow;

/** Asks the rules of giving an item to a later stage, before a page is drawn. */
@ApplicationScoped
class DeferralLook {

    private final Ledger ledger;
    private final Deferral deferral;
    private final Releases releases;

    DeferralLook(Ledger ledger, Deferral deferral, Releases releases) {
        this.ledger = ledger;
        this.deferral = deferral;
        this.releases = releases;
    }

    /** @param wanted the way whose form is asked for; otherwise the first that is free */
    DeferralView of(String order, String item, Moment moment, Optional<Way> wanted, Optional<Filled> sent) {
        DeferralRules rules = deferral.rules(ledger.history(Numbers.subject(order)), moment, item)
                .fold(known -> known, reasons -> {
                    throw new NotFoundException();
                });
        Person reader = Person.of(ledger.history(Subject.person(moment.who())));
        List<Branch> ways = Arrays.stream(Way.values())
                .filter(way -> way != Way.HAND_ON || rules.secondCheck().isPresent())
                .map(way -> new Branch(way, against(way, rules, reader)))
                .toList();
        ItemState state = rules.work().state();
        return new DeferralView(
                order,
                place(rules),
                item,
                state.item().title(),
                rules.highVoltage(),
                ways,
                open(ways, wanted, sent.isPresent()),
                sent.orElseGet(() -> fresh(rules)),
                rules.laterStages().stream().map(this::stage).toList(),
                PersonRow.everybody().stream()
                        .filter(row -> !row.hasLeft)
                        .map(row -> new Option(row.number, name(row.number)))
                        .toList());
    }

    private static List<Reason> against(Way way, DeferralRules rules, Person reader) {
        var against = new ArrayList<>(
                switch (way) {
                    case RE_SEQUENCE -> rules.againstReSequencing();
                    case CARRY_OVER -> rules.againstCarryingOver();
                    case HAND_ON -> rules.againstHandingOn();
                });
        if (reader.roles().stream().noneMatch(way.roles()::contains)) {
            against.add(Reason.of("station.laterNotYours", Reason.WORKS_RULE, way.who()));
        }
        return against;
    }

    /** What was typed is drawn again also where it is refused. */
    private static Optional<Way> open(List<Branch> ways, Optional<Way> wanted, boolean sent) {
        List<Way> free = ways.stream().filter(Branch::free).map(Branch::way).toList();
        return wanted.filter(way -> sent || free.contains(way))
                .or(() -> free.stream().findFirst());
    }

    private static Filled fresh(DeferralRules rules) {
        return rules.highVoltage() ? Filled.fresh().with(Bar.ENERGISING.name(), "yes") : Filled.fresh();
    }

    private String place(DeferralRules rules) {
        String code = rules.work().guards().order().at().map(Place::place).orElse("–");
        return releases.station(code).map(station -> station.title()).orElse(code);
    }

    private Option stage(String code) {
        return new Option(code, releases.stage(code).map(Stage::title).orElse(code));
    }

    private static String name(String number) {
        return PersonName.of(number).map(row -> row.fullName + ", " + number).orElse(number);
    }
}
