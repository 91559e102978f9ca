package wainbook.station.words;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import wainbook.ledger.Saying;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.process.sheet.Limits;
import wainbook.station.StationSaying;
import wainbook.station.determination.DeterminedInWords;
import wainbook.station.joint.BoltReading;
import wainbook.station.joint.RecheckInWords;
import wainbook.works.PersonInWords;

/** What an entry of this room says, in a line. */
public final class SayingInWords {

    private SayingInWords() {}

    public static String of(Saying saying) {
        if (saying instanceof StationSaying.Measured said) {
            return judged(said.reading().toPlainString() + " " + said.unit() + limits(said), said);
        }
        if (saying instanceof StationSaying.Tabled said) {
            return judged(figures(said.cells()), said);
        }
        if (saying instanceof StationSaying.Tightened said) {
            return tightened(said);
        }
        if (saying instanceof StationSaying.Rechecked said) {
            String findings =
                    said.boltsFailing().isEmpty() ? "" : ": " + String.join(", ", RecheckInWords.findings(said));
            return with(
                    RecheckInWords.figures(said) + ", "
                            + Words.of("station.rechecked." + said.verdict().name()) + findings,
                    said);
        }
        if (saying instanceof StationSaying.Determined said) {
            String findings = DeterminedInWords.findings(said).isEmpty()
                    ? ""
                    : ": " + String.join("; ", DeterminedInWords.findings(said));
            return with(DeterminedInWords.figures(said) + ", " + DeterminedInWords.verdict(said) + findings, said);
        }
        if (saying instanceof StationSaying.SerialRead said) {
            return Words.of("station.lineSerial", said.part(), said.serial());
        }
        if (saying instanceof StationSaying.LotUsed said) {
            return Words.of("station.lineLot", said.part(), said.lot());
        }
        if (saying instanceof StationSaying.Counted said) {
            return judged(said.quantity().toPlainString() + " " + said.unit(), said);
        }
        if (saying instanceof StationSaying.Chosen said) {
            return judged(said.choice(), said);
        }
        if (saying instanceof StationSaying.Attended said) {
            return judged(
                    Words.of("station.lineAttended", said.choice(), said.place(), PersonInWords.name(said.second())),
                    said);
        }
        if (saying instanceof StationSaying.Noted said) {
            return said.words();
        }
        if (saying instanceof StationSaying.SoftwareRead said) {
            return judged(said.module() + " " + said.version(), said);
        }
        if (saying instanceof StationSaying.Attached said) {
            return Words.of(
                    "station.lineFile",
                    said.file().mediaType(),
                    said.file().sha256().substring(0, 8));
        }
        if (saying instanceof StationSaying.WaitBegun said) {
            return Words.of("station.lineWaitBegun", said.minutes());
        }
        if (saying instanceof StationSaying.Waited said) {
            return Words.of("station.lineWaited", said.minutes());
        }
        if (saying instanceof StationSaying.Observed said) {
            return Words.of("station.lineObserved", figures(said.readings()));
        }
        if (saying instanceof StationSaying.Voided said) {
            return Words.of("station.lineVoided", said.item(), said.reason());
        }
        if (saying instanceof StationSaying.ReSequenced said) {
            return Words.of("station.lineReSequenced", said.toStage(), said.reason());
        }
        if (saying instanceof StationSaying.CarriedOver said) {
            return Words.of("station.lineCarriedOver", said.toStage(), said.owner(), said.reason());
        }
        if (saying instanceof StationSaying.HandedOn said) {
            return Words.of("station.lineHandedOn", said.byKm(), said.reason());
        }
        if (saying instanceof StationSaying.Taken) {
            return Words.of("station.lineTaken");
        }
        if (saying instanceof StationSaying.TakenFromPaper said) {
            return Words.of("station.lineFromPaper", said.form());
        }
        if (saying instanceof StationSaying.GivenBack) {
            return Words.of("station.lineGivenBack");
        }
        return Words.of("station.lineConfirmed");
    }

    private static String judged(String what, StationSaying.Result result) {
        return with(what + ", " + ItemLine.verdict(result.verdict()), result);
    }

    /** What does not pass is named bolt by bolt, wherever the entry is read. */
    private static String tightened(StationSaying.Tightened said) {
        String verdict =
                BoltReading.undecided(said) ? Words.of("station.verdict.UNDECIDED") : ItemLine.verdict(said.verdict());
        String findings = said.boltsOutside().isEmpty() ? "" : ": " + String.join(", ", BoltReading.findings(said));
        return with(figures(said.boltsNm()) + " N·m" + limits(said) + ", " + verdict + findings, said);
    }

    private static String with(String verdict, StationSaying.Result result) {
        return result.basis()
                .used()
                .map(used -> Words.of("station.lineWith", verdict, used.instrument(), Formats.date(used.due())))
                .orElse(verdict);
    }

    private static String limits(StationSaying.Measured said) {
        return said.works()
                .or(said::legal)
                .map(limits -> " " + Words.of("station.lineLimit", Wanted.said(limits), said.unit()))
                .orElse("");
    }

    private static String limits(StationSaying.Tightened said) {
        Limits limits = Limits.between(
                said.torque().limitsNm().lower(), said.torque().limitsNm().upper());
        return " " + Words.of("station.lineLimit", Wanted.said(limits), "N·m");
    }

    private static String figures(List<BigDecimal> figures) {
        return figures.stream().map(BigDecimal::toPlainString).collect(Collectors.joining(" / "));
    }
}
