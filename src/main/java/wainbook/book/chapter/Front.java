package wainbook.book.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.book.page.Vehicle.GateLine;
import wainbook.book.print.Block.Fact;
import wainbook.book.print.Book.Cover;
import wainbook.book.print.Cell;
import wainbook.book.print.Grid;
import wainbook.book.print.Manuscript;
import wainbook.book.print.Row;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.page.Words;

/** The cover: which vehicle, how far it is, its way, and the fingerprint that proves all the rest. */
final class Front {

    private Front() {}

    static Cover of(Material material) {
        return new Cover(
                material.number(),
                material.kind() + ", " + material.order().ordered().operator(),
                state(material),
                material.handedOver(),
                new Manuscript("index", material.number())
                        .bar(material.vehicle().bar())
                        .grid(way(material), Words.of("printed.noWay"))
                        .facts(facts(material))
                        .end());
    }

    private static String state(Material material) {
        Optional<String> given = material.history()
                .saying(HandedOver.class)
                .findFirst()
                .map(entry -> Words.of(
                        "printed.given",
                        ((HandedOver) entry.saying()).receivedBy(),
                        material.formats().moment(entry.moment().at())));
        return given.orElseGet(
                () -> Words.of("printed.notFinished", material.vehicle().phase()));
    }

    private static Grid way(Material material) {
        var rows = new ArrayList<Row>();
        for (GateLine gate : material.vehicle().gates()) {
            rows.add(Row.of(
                    Cell.of(gate.title()),
                    Cell.of(gate.standing(), gate.meaning().equals("danger") ? "danger" : ""),
                    Cell.of(gate.gate()
                            .flatMap(known -> known.refused().or(known::signed))
                            .map(entry ->
                                    material.formats().moment(entry.moment().at()))
                            .orElse("")),
                    Cell.of(gate.signer().orElse(""))));
        }
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.stage"), 8),
                        Grid.column(Words.of("printed.gate"), 5),
                        Grid.column(Words.of("printed.when"), 4),
                        Grid.column(Words.of("printed.signedBy"), 3)),
                rows);
    }

    private static List<Fact> facts(Material material) {
        var facts = new ArrayList<Fact>();
        material.order().donor().ifPresent(donor -> {
            facts.add(fact("printed.vin", donor.vin(), "fixed"));
            facts.add(fact("printed.registration", donor.registration(), ""));
        });
        material.order().links().from().ifPresent(from -> {
            facts.add(
                    fact("printed.furtherVolume", Words.of("printed.carriesOn", from.earlier(), from.carriesOn()), ""));
            facts.add(fact("printed.fingerprintOfEarlier", from.head(), "fixed wrap"));
            facts.add(fact("printed.cameBackFor", from.reason(), ""));
        });
        facts.add(fact("printed.works", material.works(), ""));
        facts.add(fact(
                "printed.madeFrom",
                Words.of(
                        "printed.upTo",
                        material.stored().number(),
                        material.formats().full(material.at())),
                ""));
        facts.add(fact("printed.fingerprint", material.stored().hash(), "fixed wrap"));
        return facts;
    }

    static Fact fact(String key, String text, String look) {
        return new Fact(Words.of(key), text, look);
    }
}
