package wainbook.book.chapter;

import java.util.ArrayList;
import java.util.List;
import wainbook.book.page.Vehicle;
import wainbook.book.print.Chapter;
import wainbook.book.print.Manuscript;
import wainbook.handover.document.DocumentLine;
import wainbook.matter.nonconformity.Nonconformities;
import wainbook.order.FactQuestion;
import wainbook.page.Words;
import wainbook.station.StageRecord;

/** Where the vehicle stands, and what is not there, said plainly before all else. */
final class Missing {

    private Missing() {}

    static Chapter of(Material material) {
        Vehicle vehicle = material.vehicle();
        var text = new Manuscript("standing", Words.of("printed.standing"))
                .text(vehicle.sentence())
                .text(Words.of("printed.power", vehicle.power().sentence()))
                .part("missing", Words.of("printed.missing"));
        List<String> missing = missing(material);
        return missing.isEmpty()
                ? text.text(Words.of("printed.nothingMissing")).end()
                : text.list(missing).end();
    }

    private static List<String> missing(Material material) {
        Vehicle vehicle = material.vehicle();
        var missing = new ArrayList<String>();
        if (!material.handedOver()) {
            missing.add(Words.of("printed.missingHandover", vehicle.phase()));
        }
        if (material.order().donor().isEmpty()) {
            missing.add(Words.of("printed.missingDonor"));
        }
        vehicle.gates().stream()
                .filter(gate -> !gate.meaning().equals("safe"))
                .forEach(gate -> missing.add(Words.of("printed.missingGate", gate.title(), gate.standing())));
        for (StageRecord stage : material.stages()) {
            stage.unsettled()
                    .forEach(item -> missing.add(Words.of(
                            "printed.missingItem",
                            material.names().stage(stage.stage()),
                            item.item().title(),
                            Words.of("station.status." + item.status().name()))));
        }
        Nonconformities.of(material.history())
                .awaitingDisposition()
                .forEach(open -> missing.add(Words.of("printed.missingDisposition", open.title())));
        vehicle.matters()
                .holds()
                .forEach(hold -> missing.add(Words.of("printed.missingRelease", hold.hold(), hold.kind())));
        vehicle.matters()
                .deferred()
                .forEach(work -> missing.add(Words.of("printed.missingDeferred", work.item(), work.toStage())));
        vehicle.matters()
                .doubts()
                .forEach(doubt -> missing.add(Words.of(
                        "printed.missingDoubt",
                        doubt.containment(),
                        doubt.open().size())));
        vehicle.missing().stream()
                .map(FactQuestion::label)
                .forEach(fact -> missing.add(Words.of("printed.missingFact", fact)));
        documents(material, missing);
        if (Weights.of(material).isEmpty()) {
            missing.add(Words.of("printed.missingWeights"));
        }
        if (material.photographs().left().count() > 0) {
            missing.add(PhotographsChapter.left(material.photographs()));
        }
        if (vehicle.fitted().isEmpty()) {
            missing.add(Words.of("printed.missingSerials"));
        }
        if (SpecificationPart.standing(material).isEmpty()) {
            missing.add(Words.of("printed.missingSpecification"));
        }
        return missing;
    }

    private static void documents(Material material, List<String> missing) {
        if (material.vehicle().documents().isEmpty()) {
            missing.add(Words.of("printed.missingRules"));
        }
        material.vehicle().documents().stream()
                .flatMap(set -> set.documents().stream())
                .filter(document -> document.standing().isOpen())
                .map(document -> new DocumentLine(
                        material.number(),
                        document,
                        material.vehicle().documents().orElseThrow().handover(),
                        material.handedOver()))
                .forEach(line -> missing.add(Words.of(
                        "printed.missingDocument",
                        line.document().id(),
                        line.name(),
                        line.standing().word())));
    }
}
