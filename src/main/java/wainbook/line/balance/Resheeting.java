package wainbook.line.balance;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.line.balance.Proposal.Moved;
import wainbook.process.Route;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;

/**
 * The check sheets as a proposal would have them. What comes from an earlier stage stands first in its new sheet, what comes from
 * a later one last, each in its old order; what no longer stands in the same sheet is no longer named as coming before.
 *
 * @param order of the stages along the line
 */
record Resheeting(List<Route> routes, Map<String, CheckSheet> sheets, Map<String, Integer> order) {

    /** The sheets that change; empty if an item does not stand any more where the proposal found it. */
    Optional<List<CheckSheet>> changed(List<Moved> moves) {
        Map<String, CheckSheet> changed = new LinkedHashMap<>();
        Set<Moved> made = new HashSet<>();
        for (Route route : routes) {
            for (Moved move : moves) {
                if (!move.minutes().containsKey(route.vehicleKind()) || !passes(route, move)) {
                    continue;
                }
                made.add(move);
                Optional<CheckSheet> from = at(route, move.from(), changed);
                Optional<CheckSheet> to = at(route, move.to(), changed);
                boolean there = from.flatMap(sheet -> sheet.item(move.key())).isPresent();
                boolean gone = to.flatMap(sheet -> sheet.item(move.key())).isPresent() && !there;
                if (to.isEmpty() || from.isEmpty() || !(there || gone)) {
                    return Optional.empty();
                }
                if (there && !move(from.get(), to.get(), move, changed)) {
                    return Optional.empty();
                }
            }
        }
        return made.containsAll(moves)
                ? Optional.of(changed.values().stream().map(Resheeting::within).toList())
                : Optional.empty();
    }

    /** A kind may have a route besides that passes some stages only, such as that of vehicles that come back. */
    private static boolean passes(Route route, Moved move) {
        return route.leg(move.from()).isPresent() && route.leg(move.to()).isPresent();
    }

    private Optional<CheckSheet> at(Route route, String stage, Map<String, CheckSheet> changed) {
        return route.leg(stage).map(Route.Leg::checkSheet).map(code -> changed.getOrDefault(code, sheets.get(code)));
    }

    /** A sheet without an item is none: the move that would take its last is not made. */
    private boolean move(CheckSheet from, CheckSheet to, Moved move, Map<String, CheckSheet> changed) {
        CheckItem item = from.item(move.key()).orElseThrow();
        List<CheckItem> left = from.items().stream()
                .filter(one -> !one.key().equals(move.key()))
                .toList();
        boolean fromEarlier = order.get(move.from()) < order.get(move.to());
        List<CheckItem> there = new ArrayList<>(to.items());
        there.add(fromEarlier ? behindOthersOfEarlier(to) : there.size(), item);
        if (left.isEmpty()) {
            return false;
        }
        changed.put(from.code(), with(from, left));
        changed.put(to.code(), with(to, there));
        return true;
    }

    private int behindOthersOfEarlier(CheckSheet sheet) {
        Set<String> before =
                sheets.get(sheet.code()).items().stream().map(CheckItem::key).collect(Collectors.toSet());
        return (int) sheet.items().stream()
                .takeWhile(item -> !before.contains(item.key()))
                .count();
    }

    private static CheckSheet with(CheckSheet sheet, List<CheckItem> items) {
        return new CheckSheet(sheet.code(), sheet.title(), items, sheet.stage());
    }

    private static CheckSheet within(CheckSheet sheet) {
        Set<String> keys = sheet.items().stream().map(CheckItem::key).collect(Collectors.toSet());
        return with(sheet, sheet.items().stream().map(item -> after(item, keys)).toList());
    }

    private static CheckItem after(CheckItem item, Set<String> keys) {
        List<String> left = item.after().stream().filter(keys::contains).toList();
        List<CheckItem.Dependence> depends = item.dependsOn().stream()
                .filter(one -> one.sort() != CheckItem.Dependence.Sort.ITEM || keys.contains(one.code()))
                .toList();
        return left.equals(item.after()) && depends.equals(item.dependsOn())
                ? item
                : new CheckItem(
                        item.key(),
                        item.title(),
                        item.asks(),
                        item.condition(),
                        item.competence(),
                        item.caution(),
                        item.plannedMinutes(),
                        item.zone(),
                        item.parts(),
                        left,
                        depends,
                        item.appliesWhen(),
                        item.tries(),
                        item.noConcession());
    }

    static Map<String, CheckSheet> byCode(Stream<CheckSheet> sheets) {
        return sheets.collect(Collectors.toMap(CheckSheet::code, Function.identity(), (former, latter) -> latter));
    }
}
