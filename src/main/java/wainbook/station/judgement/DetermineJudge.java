package wainbook.station.judgement;

import java.math.BigDecimal;
import java.util.List;
import wainbook.process.sheet.Ask;
import wainbook.station.Reply;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Determined;
import wainbook.station.StationSaying.Finding;
import wainbook.station.determination.Determining;
import wainbook.station.determination.GivenInputs;
import wainbook.station.determination.Judgements;
import wainbook.station.determination.ReadingsTyped;

/**
 * Judges readings by the calculation that their item names.
 *
 * @param given what the sheet and earlier items give
 * @param accuracyPercent of the instrument in hand, in percent of its reading
 */
record DetermineJudge(About about, Basis basis, GivenInputs given, BigDecimal accuracyPercent) {

    Judged of(Ask.Determine ask, Reply reply) {
        List<wainbook.act.Reason> faults = ReadingsTyped.faults(ask, reply.readings());
        if (!faults.isEmpty()) {
            return new Judged.Faulty(faults);
        }
        return given.missing()
                .<Judged>map(reason -> new Judged.Faulty(List.of(reason)))
                .orElseGet(() -> determined(ask, reply));
    }

    private Judged determined(Ask.Determine ask, Reply reply) {
        return Determining.of(ask, given.with(reply.readings(), accuracyPercent))
                .fold(
                        found -> Judged.answered(new Determined(
                                about,
                                basis,
                                ask.method(),
                                ask.quantity(),
                                reply.readings(),
                                found.inputs(),
                                found.value(),
                                ask.method().unit(),
                                found.openEnded(),
                                found.uncertainty(),
                                found.results(),
                                found.judgements(),
                                Judge.verdict(Judgements.worst(found.judgements().stream()
                                                .map(StationSaying.Judgement::finding)
                                                .toList())
                                        == Finding.PASS))),
                        reason -> new Judged.Faulty(List.of(reason)));
    }
}
