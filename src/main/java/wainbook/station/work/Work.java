package wainbook.station.work;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.station.ItemState;
import wainbook.station.Reply;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.WaitBegun;
import wainbook.station.determination.GivenInputs;
import wainbook.station.judgement.Judge;
import wainbook.station.judgement.Judged;
import wainbook.works.instruments.Instrument;

/**
 * One item in one person's hands at one moment: all that an entry is decided from.
 *
 * @param landing sources of voltage that the work brings aboard
 */
public record Work(
        History history,
        String stage,
        ItemState state,
        Guards guards,
        Moment moment,
        Judge.Files files,
        List<String> landing) {

    /** What came over from an earlier stage is kept under the sheet that it came with. */
    public About about() {
        var fitted = state.item().parts().stream().map(CheckItem.PartUse::part).toList();
        return new About(
                stage,
                state.line().sheet(),
                state.line().revision(),
                state.key(),
                fitted.isEmpty() ? partAsked() : fitted);
    }

    public Judged judge(Reply reply) {
        if (state.item().asks() instanceof Ask.Wait && state.status() == ItemState.Status.WAITING) {
            return waited();
        }
        var judge = new Judge(about(), basis(), guards.joint(), toolPercent(), this::given, files);
        return judge.of(state.item().asks(), reply);
    }

    private Basis basis() {
        Optional<StationSaying.Held> held = state.item()
                .competence()
                .flatMap(guards.person()::competence)
                .map(known -> new StationSaying.Held(known.code(), known.level(), known.validTo()));
        Optional<StationSaying.Used> used =
                guards.instrument().flatMap(known -> known.due().map(due -> new StationSaying.Used(known.code(), due)));
        return new Basis(state.item().condition(), held, used);
    }

    private Judged waited() {
        Entry begun = state.entries().stream()
                .filter(entry -> entry.saying() instanceof WaitBegun)
                .reduce((former, latter) -> latter)
                .orElseThrow();
        int minutes = ((WaitBegun) begun.saying()).minutes();
        Instant over = begun.moment().at().plus(Duration.ofMinutes(minutes));
        return moment.at().isBefore(over)
                ? new Judged.Faulty(List.of(Reason.of("station.stillWaiting", Reason.WORKS_RULE, minutes, over)))
                : Judged.answered(new StationSaying.Waited(
                        about(), basis(), begun.moment().at(), minutes));
    }

    private GivenInputs given(Ask.Determine ask) {
        return guards.record().given(ask);
    }

    private BigDecimal toolPercent() {
        return guards.instrument().flatMap(Instrument::accuracyPercent).orElse(BigDecimal.ZERO);
    }

    private List<String> partAsked() {
        if (state.item().asks() instanceof Ask.Serial serial) {
            return List.of(serial.part());
        }
        return state.item().asks() instanceof Ask.Lot lot ? List.of(lot.part()) : List.of();
    }
}
