package wainbook.trace;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import wainbook.isolation.IsolationSaying;
import wainbook.ledger.Entry;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.Ordered;
import wainbook.page.Words;
import wainbook.station.StationSaying.LotUsed;
import wainbook.station.StationSaying.Rechecked;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.SerialRead;
import wainbook.station.StationSaying.Tightened;

/**
 * Something that an entry names and that it can be found by.
 *
 * @param shown as it stands on record
 */
record Mention(Sort sort, String shown) {

    static final int LONGEST = 120;

    /** What can be searched for. */
    enum Sort {
        ORDER,
        VIN,
        REGISTRATION,
        SERIAL,
        LOT,
        INSTRUMENT,
        JOINT,
        PERSON;

        String word() {
            return Words.of("trace.sort." + name());
        }
    }

    /** As it is searched for: in capitals, without blanks. */
    static String code(String text) {
        String plain = text.replaceAll("\\s+", "").toUpperCase(Locale.ROOT);
        return plain.substring(0, Math.min(plain.length(), LONGEST));
    }

    String code() {
        return code(shown);
    }

    /** Everything that an entry of a work order names; who recorded it first. */
    static Set<Mention> of(Entry entry) {
        Set<Mention> named = new LinkedHashSet<>();
        if (entry.subject().sort() == Subject.Sort.WORK_ORDER) {
            named.add(new Mention(Sort.PERSON, entry.moment().who()));
            if (entry.saying() instanceof Ordered) {
                named.add(new Mention(Sort.ORDER, entry.subject().code()));
            }
            vehicle(entry.saying(), named);
            work(entry.saying(), named);
            isolation(entry.saying(), named);
        }
        named.removeIf(mention -> mention.code().isEmpty());
        return named;
    }

    private static void vehicle(Saying saying, Set<Mention> named) {
        if (saying instanceof DonorReceived said) {
            named.add(new Mention(Sort.VIN, said.vin()));
            named.add(new Mention(Sort.REGISTRATION, said.registration()));
        }
    }

    private static void work(Saying saying, Set<Mention> named) {
        if (saying instanceof Result said) {
            said.basis().used().ifPresent(used -> named.add(new Mention(Sort.INSTRUMENT, used.instrument())));
        }
        if (saying instanceof SerialRead said) {
            named.add(new Mention(Sort.SERIAL, said.serial()));
        } else if (saying instanceof LotUsed said) {
            named.add(new Mention(Sort.LOT, said.lot()));
        } else if (saying instanceof Rechecked said) {
            named.add(new Mention(Sort.JOINT, said.joint()));
        } else if (saying instanceof Tightened said) {
            named.add(new Mention(Sort.JOINT, said.joint()));
        }
    }

    private static void isolation(Saying saying, Set<Mention> named) {
        if (saying instanceof IsolationSaying said) {
            instruments(said).forEach(code -> named.add(new Mention(Sort.INSTRUMENT, code)));
        }
    }

    private static List<String> instruments(IsolationSaying saying) {
        if (saying instanceof IsolationSaying.AtPoint said) {
            return List.of(said.tester());
        }
        if (saying instanceof IsolationSaying.TesterProvedBefore said) {
            return proving(said.proving());
        }
        if (saying instanceof IsolationSaying.TesterProvedAfter said) {
            return proving(said.proving());
        }
        if (saying instanceof IsolationSaying.SanctionIssued said) {
            return List.of(said.instrument().code());
        }
        return saying instanceof IsolationSaying.LivePermitIssued said
                ? List.of(said.gloves().code())
                : List.of();
    }

    private static List<String> proving(IsolationSaying.Proving proving) {
        return List.of(proving.tester().code(), proving.source().code());
    }
}
