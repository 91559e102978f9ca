package wainbook.pack;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.pack.watch.Alarm;

/** What is said of a pack in its own stream; and, in the works' stream, which parts are packs that the works keeps. */
public sealed interface PackSaying extends Saying {

    /** What was looked at, and whether it was in order. */
    record Seen(Looked what, boolean sound) {}

    /** How the pack's own insulation was read, contactors open. */
    enum Way {
        TERMINALS_JOINED,
        LOWER_OF_TERMINALS
    }

    /** Against the limit, with the instrument's uncertainty. */
    enum Finding {
        PASS,
        UNDECIDED,
        FAIL
    }

    /**
     * The pack's own insulation resistance.
     *
     * @param openEnded whether the reading is the instrument's ceiling, so at least that much
     * @param workingV the greatest voltage on the pack's plate
     * @param accuracyPercent expanded uncertainty of the instrument, k = 2
     */
    record Insulation(
            Way way,
            BigDecimal measuredOhm,
            boolean openEnded,
            BigDecimal testV,
            BigDecimal workingV,
            BigDecimal limitOhmPerVolt,
            BigDecimal accuracyPercent,
            String instrument,
            LocalDate instrumentDue,
            Finding finding) {}

    /** What stands against accepting a pack. */
    enum Remark {
        NOT_SOUND,
        INSULATION_LOW,
        INSULATION_UNDECIDED,
        VOLTAGE_ABOVE_PLATE,
        TEST_SUMMARY_MISSING,
        CERTIFICATE_MISSING
    }

    /** What becomes of a pack that came in. */
    enum Verdict {
        ACCEPTED,
        /** Waits for papers, another measurement, or a new seal. */
        SET_ASIDE,
        QUARANTINED
    }

    /** A competence as it stood. */
    record Authority(String competence, int level, LocalDate validTo) {}

    /**
     * A receipt inspection.
     *
     * @param testSummary number of the test summary of UN 38.3, if it is in hand
     * @param certificate number of the test certificate, if it is in hand
     */
    @Kind("pack.received/1")
    record PackReceived(
            String packType,
            String lot,
            LocalDate made,
            BigDecimal chargePercent,
            BigDecimal voltageV,
            List<Seen> looked,
            Insulation insulation,
            Optional<String> testSummary,
            Optional<String> certificate,
            String place,
            Optional<String> words,
            Authority by,
            List<Remark> remarks,
            Verdict verdict)
            implements PackSaying {
        public PackReceived {
            looked = List.copyOf(looked);
            remarks = List.copyOf(remarks);
        }
    }

    /** What a storage check found outside the window. */
    enum Outside {
        CHARGE_LOW,
        CHARGE_HIGH,
        COLD,
        WARM,
        DAMP
    }

    @Kind("pack.storageChecked/1")
    record StorageChecked(
            BigDecimal chargePercent,
            BigDecimal temperatureC,
            boolean dry,
            String place,
            Optional<String> words,
            Authority by,
            List<Outside> outside)
            implements PackSaying {
        public StorageChecked {
            outside = List.copyOf(outside);
        }
    }

    /**
     * Set aside as damaged or defective.
     *
     * @param heating whether it was warm, hissing or smoking: more distance
     * @param lot as said then, for a pack that was never received
     * @param order the vehicle that it is fitted in, held by {@code hold}
     */
    @Kind("pack.quarantined/1")
    record Quarantined(
            Trigger trigger,
            boolean heating,
            Optional<String> place,
            Optional<String> lot,
            Optional<String> words,
            Optional<String> order,
            Optional<Integer> hold)
            implements PackSaying {}

    @Kind("pack.watched/1")
    record Watched(BigDecimal packC, BigDecimal ambientC, List<Alarm> alarms, Optional<String> words)
            implements PackSaying {
        public Watched {
            alarms = List.copyOf(alarms);
        }
    }

    /** What a qualified person found. */
    enum Judgement {
        SOUND,
        DEFECTIVE,
        /** Its whole lot stays held with it. */
        DEFECTIVE_LOT
    }

    @Kind("pack.judged/1")
    record Judged(Judgement judgement, String words, Authority by) implements PackSaying {}

    @Kind("pack.sentOff/1")
    record SentOff(String to, Optional<String> words) implements PackSaying {}

    /** From now on this part is fitted only as a pack that was received here. */
    @Kind("pack.partKept/1")
    record PartKept(String part) implements PackSaying {}

    @Kind("pack.partLetGo/1")
    record PartLetGo(String part) implements PackSaying {}
}
