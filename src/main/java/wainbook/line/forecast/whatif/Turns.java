package wainbook.line.forecast.whatif;

import java.util.ArrayList;
import java.util.List;
import wainbook.line.forecast.state.OnHand;
import wainbook.line.forecast.state.TheLineNow;
import wainbook.line.forecast.whatif.WhatIf.Turn;

/** The order in which vehicles come onto the line. */
final class Turns {

    private Turns() {}

    static TheLineNow taken(TheLineNow line, Turn turn) {
        var vehicles = new ArrayList<>(line.vehicles());
        List<OnHand> waiting = line.waiting();
        OnHand moved = waiting.stream()
                .filter(one -> one.order().equals(turn.order()))
                .findFirst()
                .orElseThrow();
        var next = new ArrayList<>(waiting);
        int at = waiting.indexOf(moved);
        next.remove(at);
        next.add(Math.max(0, Math.min(next.size(), place(turn.place(), at))), moved);
        vehicles.removeAll(waiting);
        vehicles.addAll(next);
        return line.with(vehicles);
    }

    private static int place(Turn.Place place, int at) {
        return switch (place) {
            case FIRST -> 0;
            case ONE_UP -> at - 1;
            case ONE_DOWN -> at + 1;
        };
    }
}
