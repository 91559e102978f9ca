package wainbook.quality.chart;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.quality.QualitySaying.DriftSettled;
import wainbook.quality.QualitySaying.Place;

/** Knows which signals were looked into, and settles one, with words. Its id follows from the signal: it is settled once. */
@ApplicationScoped
public class Settling {

    /** What is asked. */
    public record ToSettle(UUID id, Charted chart, Sign sign, Place upTo, String words) implements Asked {

        /** @param of the chart as its page showed it */
        public static ToSettle of(Standing of, String words) {
            String named = "drift/" + of.chart().of().key() + "/" + of.newest().entry() + "/"
                    + of.newest().place();
            return new ToSettle(
                    UUID.nameUUIDFromBytes(named.getBytes(StandardCharsets.UTF_8)),
                    of.chart().of(),
                    of.sign(),
                    of.newest(),
                    words);
        }

        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return DriftSettled.class;
        }
    }

    private final Ledger ledger;

    Settling(Ledger ledger) {
        this.ledger = ledger;
    }

    /** What was settled last, by the key of the chart. */
    public Map<String, Entry> latest() {
        return ledger.history(Subject.works())
                .saying(DriftSettled.class)
                .collect(Collectors.toMap(entry -> said(entry).chart(), entry -> entry, (former, latter) -> latter));
    }

    public Optional<Standing> standing(ItemChart chart) {
        return standing(chart, latest());
    }

    /** @param latest as {@link #latest()} says */
    public Optional<Standing> standing(ItemChart chart, Map<String, Entry> latest) {
        return Standing.of(
                chart,
                Optional.ofNullable(latest.get(chart.of().key()))
                        .map(entry -> said(entry).upTo()));
    }

    public Outcome<Entry> settle(ToSettle asked, Actor actor) {
        return ledger.write(
                asked,
                actor,
                reading -> asked.words().isBlank() || asked.words().length() > 2000
                        ? Decision.refuse(Reason.of("quality.reasonMissing", Reason.WORKS_RULE)
                                .liftedAt("#words"))
                        : Decision.say(
                                Subject.works(),
                                new DriftSettled(
                                        asked.chart().key(), asked.sign().name(), asked.upTo(), asked.words())));
    }

    private static DriftSettled said(Entry entry) {
        return (DriftSettled) entry.saying();
    }
}
