package wainbook.setup;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Set;
import wainbook.page.Navigation;
import wainbook.page.Place;
import wainbook.works.Role;

/** The way round the works' pages. */
@ApplicationScoped
class Places implements Navigation {

    @Override
    public List<Place> places() {
        return List.of(
                Place.forEveryone("/line", "line.placeLine"),
                Place.forEveryone("/stations", "line.placeStations"),
                Place.forEveryone("/orders", "order.placeOrders"),
                Place.forEveryone("/gates", "gate.placeGates"),
                Place.forEveryone("/isolation", "isolating.placeIsolations"),
                Place.forEveryone("/locks", "isolating.placeLocks"),
                Place.forEveryone("/permits", "permit.placePermits"),
                Place.forEveryone("/packs", "pack.placePacks"),
                Place.forEveryone("/handover", "handover.placeHandover"),
                Place.forEveryone("/matters", "matter.placeMatters"),
                Place.forEveryone("/quality/containments", "quality.placeContainments"),
                Place.forEveryone("/quality/charts", "quality.placeCharts"),
                Place.forEveryone("/quality/yield", "quality.placeYield"),
                Place.forEveryone("/quality/questions", "quality.placeQuestions"),
                Place.forEveryone("/trace", "trace.placeTrace"),
                Place.forEveryone("/process", "process.placeProcess"),
                Place.forEveryone("/people", "works.placePeople"),
                Place.forEveryone("/instruments", "works.placeInstruments"),
                Place.forEveryone("/tool-store", "works.placeStore"),
                Place.forEveryone("/calculations", "engineering.placeCalculations"),
                new Place("/setup/works", "setup.placeWorks", Set.of(Role.administrator, Role.worksEngineer)),
                new Place("/setup/passwords", "setup.placePasswords", Set.of(Role.administrator)),
                new Place(
                        "/verification",
                        "ledger.placeVerification",
                        Set.of(Role.auditor, Role.qualityEngineer, Role.administrator)));
    }
}
