package wainbook.trace;

import java.util.LinkedHashSet;
import java.util.Set;
import wainbook.ledger.Entry;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.matter.MatterSaying.NonconformityOpened;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.OrderSaying.Rebound;
import wainbook.order.OrderSaying.Returned;
import wainbook.order.specification.SpecificationSaying.Specified;
import wainbook.permit.PermitSaying.PermitIssued;
import wainbook.trace.Mention.Sort;
import wainbook.waste.WasteSaying.Collected;
import wainbook.waste.WasteSaying.Placed;
import wainbook.waste.WasteSaying.Share;

/** What an entry names, and of which vehicle it says so. */
final class Mentions {

    /** @param order the vehicle that is found by it */
    record Of(String order, Mention mention) {}

    private Mentions() {}

    /** Everything that an entry names. */
    static Set<Of> in(Entry entry) {
        Set<Of> named = new LinkedHashSet<>();
        if (entry.subject().sort() == Subject.Sort.WORK_ORDER) {
            ofVehicle(entry).forEach(mention -> named.add(new Of(entry.subject().code(), mention)));
        } else if (entry.saying() instanceof Collected said) {
            var note = Mention.of(Sort.NOTE, said.note().code());
            said.shares().stream().map(Share::order).forEach(order -> named.add(new Of(order, note)));
        }
        named.removeIf(one -> one.mention().code().isEmpty());
        return named;
    }

    /** Who recorded it first. */
    private static Set<Mention> ofVehicle(Entry entry) {
        Set<Mention> named = new LinkedHashSet<>();
        named.add(Mention.of(Sort.PERSON, entry.moment().who()));
        vehicle(entry, named);
        AtStations.add(entry.saying(), named);
        AtIsolations.add(entry.saying(), named);
        AtHandovers.add(entry.subject().code(), entry.saying(), named);
        matters(entry, named);
        return named;
    }

    private static void vehicle(Entry entry, Set<Mention> named) {
        Saying saying = entry.saying();
        if (saying instanceof Ordered) {
            named.add(Mention.of(Sort.ORDER, entry.subject().code()));
        } else if (saying instanceof DonorReceived said) {
            named.add(Mention.of(Sort.VIN, said.vin()));
            named.add(Mention.of(Sort.REGISTRATION, said.registration()));
            named.add(sheet(said.binding()));
        } else if (saying instanceof Returned said) {
            named.add(Mention.of(Sort.VIN, said.vin()));
            named.add(Mention.of(Sort.REGISTRATION, said.registration()));
        } else if (saying instanceof Moved said) {
            said.binding().map(Mentions::sheet).ifPresent(named::add);
        } else if (saying instanceof Rebound said) {
            named.add(sheet(said.to()));
        } else if (saying instanceof Specified said) {
            named.add(Mention.of(Sort.PARTS_REVISION, "PARTS/" + said.chosen().componentsRevision()));
        }
    }

    private static Mention sheet(Binding binding) {
        return Mention.of(Sort.SHEET_REVISION, binding.sheet() + "/" + binding.revision());
    }

    private static void matters(Entry entry, Set<Mention> named) {
        Saying saying = entry.saying();
        String order = entry.subject().code();
        if (saying instanceof NonconformityOpened said) {
            named.add(Mention.of(Sort.NONCONFORMITY, order + "/" + said.nonconformity()));
        } else if (saying instanceof PermitIssued said) {
            named.add(Mention.of(Sort.PERMIT, order + "/" + said.permit()));
        } else if (saying instanceof Placed said) {
            named.add(Mention.of(Sort.CONTAINER, said.container()));
        }
    }
}
