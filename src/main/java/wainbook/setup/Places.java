package wainbook.setup;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Set;
import wainbook.page.Navigation;
import wainbook.page.Place;
import wainbook.page.PlaceGroup;
import wainbook.works.Role;

/** The way round the works' pages. */
@ApplicationScoped
class Places implements Navigation {

    private static final Set<String> SETTING_UP = Set.of(Role.administrator, Role.worksEngineer);
    private static final Set<String> VERIFYING = Set.of(Role.auditor, Role.qualityEngineer, Role.administrator);

    @Override
    public List<PlaceGroup> groups() {
        return List.of(
                PlaceGroup.of(
                        "line.placeLine",
                        Place.forEveryone("/line", "line.placeLine"),
                        Place.forEveryone("/forecast", "line.placeForecast"),
                        Place.forEveryone("/milestones", "line.placeMilestones"),
                        Place.forEveryone("/line/measures", "line.placeMeasures"),
                        Place.forEveryone("/stations", "line.placeStations"),
                        Place.forEveryone("/balance", "line.placeBalance"),
                        Place.forEveryone("/wall", "line.placeWall")),
                PlaceGroup.of(Place.forEveryone("/orders", "order.placeOrders")),
                PlaceGroup.of(Place.forEveryone("/gates", "gate.placeGates")),
                PlaceGroup.of(
                        "setup.groupSafety",
                        Place.forEveryone("/isolation", "isolating.placeIsolations"),
                        Place.forEveryone("/locks", "isolating.placeLocks"),
                        Place.forEveryone("/permits", "permit.placePermits"),
                        Place.forEveryone("/safety", "safety.placeSafety"),
                        Place.forEveryone("/paper", "paper.placePaper")),
                PlaceGroup.of(Place.forEveryone("/matters", "matter.placeMatters")),
                PlaceGroup.of(
                        "setup.groupQuality",
                        Place.forEveryone("/quality/containments", "quality.placeContainments"),
                        Place.forEveryone("/quality/charts", "quality.placeCharts"),
                        Place.forEveryone("/quality/yield", "quality.placeYield"),
                        Place.forEveryone("/quality/questions", "quality.placeQuestions")),
                PlaceGroup.of(Place.forEveryone("/handover", "handover.placeHandover")),
                PlaceGroup.of(
                        "trace.placeTrace",
                        Place.forEveryone("/trace", "trace.placeTrace"),
                        Place.forEveryone("/campaigns", "campaign.placeCampaigns"),
                        new Place("/verification", "ledger.placeVerification", VERIFYING)),
                PlaceGroup.of(
                        "setup.groupWorks",
                        Place.forEveryone("/process", "process.placeProcess"),
                        Place.forEveryone("/people", "works.placePeople"),
                        Place.forEveryone("/instruments", "works.placeInstruments"),
                        Place.forEveryone("/tool-store", "works.placeStore"),
                        Place.forEveryone("/packs", "pack.placePacks"),
                        Place.forEveryone("/waste", "waste.placeWaste"),
                        new Place("/setup/works", "setup.placeWorks", SETTING_UP),
                        new Place("/setup/passwords", "setup.placePasswords", Set.of(Role.administrator))),
                PlaceGroup.of(Place.forEveryone("/calculations", "engineering.placeCalculations")));
    }
}
