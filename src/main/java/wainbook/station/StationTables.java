package wainbook.station;

import jakarta.enterprise.context.ApplicationScoped;
import wainbook.ledger.Entry;
import wainbook.ledger.Projection;
import wainbook.station.StationSaying.CarriedOver;
import wainbook.station.StationSaying.Determined;
import wainbook.station.StationSaying.HelpAnswered;
import wainbook.station.StationSaying.HelpCalled;
import wainbook.station.StationSaying.HelpResolved;
import wainbook.station.StationSaying.ReSequenced;
import wainbook.station.StationSaying.Voided;
import wainbook.station.deferral.DeferredRow;
import wainbook.station.determination.DeterminedValue;
import wainbook.station.help.OpenHelpCall;

/** Help calls and work given to a later stage, as lists read them. */
@ApplicationScoped
class StationTables implements Projection {

    @Override
    public void take(Entry entry) {
        String order = entry.subject().code();
        if (entry.saying() instanceof HelpCalled said) {
            called(order, said, entry).persist();
        } else if (entry.saying() instanceof HelpAnswered said) {
            OpenHelpCall.<OpenHelpCall>findByIdOptional(OpenHelpCall.id(order, said.call()))
                    .filter(row -> row.answeredBy == null)
                    .ifPresent(row -> row.answeredBy = entry.moment().who());
        } else if (entry.saying() instanceof HelpResolved said) {
            OpenHelpCall.deleteById(OpenHelpCall.id(order, said.call()));
        } else if (entry.saying() instanceof Determined said) {
            DeterminedValue.keep(entry, said);
        } else if (entry.saying() instanceof Voided said) {
            DeterminedValue.deleteById(said.entry());
        } else if (entry.saying() instanceof ReSequenced || entry.saying() instanceof CarriedOver) {
            var row = new DeferredRow();
            row.entryId = entry.id();
            row.workOrder = order;
            row.persist();
        }
    }

    private static OpenHelpCall called(String order, HelpCalled said, Entry entry) {
        var row = new OpenHelpCall();
        row.id = OpenHelpCall.id(order, said.call());
        row.workOrder = order;
        row.callNumber = said.call();
        row.askedFor = said.help();
        row.place = said.place().orElse(null);
        row.words = said.words().orElse(null);
        row.workStands = said.workStands();
        row.calledBy = entry.moment().who();
        row.since = entry.moment().at();
        return row;
    }

    @Override
    public void forget() {
        OpenHelpCall.deleteAll();
        DeferredRow.deleteAll();
        DeterminedValue.deleteAll();
    }
}
