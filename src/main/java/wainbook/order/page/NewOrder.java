package wainbook.order.page;

import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.order.FactQuestion;
import wainbook.order.OrderSaying.FactStated;
import wainbook.page.Option;
import wainbook.predicate.Compiled;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.process.VehicleFacts;
import wainbook.process.sheet.CheckItem;

/** What a new order can be chosen from, and the facts that the check sheets of these routes ask for. */
public record NewOrder(List<Option> routes, List<FactQuestion> questions) {

    static NewOrder of(Releases releases, List<FactStated> known) {
        Map<String, String> typed = known.stream()
                .filter(said -> VehicleFacts.VOCABULARY.names().contains(said.fact()))
                .collect(Collectors.toMap(FactStated::fact, FactStated::stated, (former, latter) -> latter));
        var asked = new TreeSet<String>(typed.keySet());
        releases.routes().forEach(route -> asked.addAll(asked(releases, route)));
        return new NewOrder(
                releases.routes().stream()
                        .map(route -> new Option(route.code(), route.title()))
                        .toList(),
                asked.stream()
                        .map(fact -> FactQuestion.of(fact, typed.getOrDefault(fact, "")))
                        .toList());
    }

    private static List<String> asked(Releases releases, Route route) {
        return Stream.concat(
                        Stream.of(route.intakeSheet()), route.legs().stream().map(Route.Leg::checkSheet))
                .flatMap(sheet -> releases.sheetInForce(sheet).stream())
                .map(Released::sheet)
                .flatMap(sheet -> sheet.items().stream())
                .flatMap(item -> facts(item).stream())
                .distinct()
                .toList();
    }

    private static List<String> facts(CheckItem item) {
        return item.appliesWhen()
                .map(VehicleFacts.PREDICATES::compile)
                .flatMap(Compiled::sound)
                .map(condition -> List.copyOf(condition.names()))
                .orElse(List.of());
    }
}
