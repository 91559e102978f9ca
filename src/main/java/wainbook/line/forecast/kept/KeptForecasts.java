package wainbook.line.forecast.kept;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.engineering.flow.history.Basis;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.line.LineSaying;
import wainbook.line.LineSaying.ForecastKept;
import wainbook.line.forecast.Forecasts;
import wainbook.line.forecast.LineForecast;
import wainbook.works.shift.WorksDay;

/** Forecasts that were kept, one a day, each in a stream of its own. Keeping one again for the same day writes nothing. */
@ApplicationScoped
public class KeptForecasts {

    /** Stands in an entry where else a person's number stands. */
    public static final String SPEAKER = "forecast";

    /** Working days: half a year. */
    public static final int REMEMBERED = 130;

    private static final int DECIMALS = 6;

    private record Keep(UUID id, List<Subject> writes) implements Asked {
        @Override
        public Class<? extends Saying> says() {
            return ForecastKept.class;
        }
    }

    private final Ledger ledger;
    private final Forecasts forecasts;
    private final WorksDay day;

    KeptForecasts(Ledger ledger, Forecasts forecasts, WorksDay day) {
        this.ledger = ledger;
        this.forecasts = forecasts;
        this.day = day;
    }

    public boolean isKept(LocalDate date) {
        return !ledger.history(Subject.forecast(date)).isEmpty();
    }

    /** Forecasts now and keeps that for the day that it is at the works; refused where no vehicle is to be finished. */
    public Outcome<Entry> keep(Clock clock) {
        Instant now = clock.instant();
        Subject today = Subject.forecast(day.of(now));
        LineForecast found = forecasts.at(now);
        if (found.vehicles().isEmpty()) {
            return Outcome.refused(
                    Reason.of("line.keptNothing", Reason.WORKS_RULE).liftedAt("/orders"));
        }
        ForecastKept said = said(day.of(now), found);
        UUID id = UUID.nameUUIDFromBytes(("kept " + today).getBytes(StandardCharsets.UTF_8));
        return ledger.write(
                new Keep(id, List.of(today)), Actor.of(SPEAKER, clock), reading -> Decision.say(today, said));
    }

    /** How many were kept: what was made of them stays true while this stays the same. */
    public long length() {
        return ledger.length(Subject.Sort.FORECAST);
    }

    /** Those kept last, {@link #REMEMBERED} at most, the oldest first: older ones speak of an older works. */
    public List<Prediction> lately() {
        return ledger.drawing(() -> last(ledger.subjects(Subject.Sort.FORECAST)).stream()
                .flatMap(subject -> ledger.history(subject).saying(ForecastKept.class))
                .flatMap(KeptForecasts::read)
                .toList());
    }

    private static List<Subject> last(List<Subject> all) {
        return all.subList(Math.max(0, all.size() - REMEMBERED), all.size());
    }

    private ForecastKept said(LocalDate date, LineForecast found) {
        List<Prediction> all = Prediction.of(found.line(), found.forecast(), day.taktMinutes());
        return new ForecastKept(
                date,
                Prediction.LEVELS.stream().map(BigDecimal::valueOf).toList(),
                found.forecast().effort().seed(),
                found.forecast().replications(),
                all.stream().map(KeptForecasts::vehicle).toList());
    }

    private static LineSaying.Vehicle vehicle(Prediction one) {
        return new LineSaying.Vehicle(
                one.order(),
                one.finish().stream().map(KeptForecasts::whole).toList(),
                one.promisedOn(),
                whole(one.promisedBy()),
                BigDecimal.valueOf(one.odds()).setScale(DECIMALS, RoundingMode.HALF_EVEN),
                one.ground().map(ground -> LineSaying.Ground.valueOf(ground.name())),
                whole(one.byStages()),
                one.byTakt().map(KeptForecasts::whole));
    }

    private static Instant whole(Instant at) {
        return at.truncatedTo(ChronoUnit.SECONDS);
    }

    private static Stream<Prediction> read(Entry entry) {
        ForecastKept kept = (ForecastKept) entry.saying();
        return kept.vehicles().stream()
                .filter(one -> one.finish().size() == Prediction.LEVELS.size())
                .map(one -> new Prediction(
                        one.order(),
                        entry.moment().at(),
                        one.finish(),
                        one.promisedOn(),
                        one.promisedBy(),
                        one.odds().doubleValue(),
                        one.ground().map(ground -> Basis.Ground.valueOf(ground.name())),
                        one.byStages(),
                        one.byTakt()));
    }
}
