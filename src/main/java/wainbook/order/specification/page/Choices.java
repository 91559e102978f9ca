package wainbook.order.specification.page;

import java.util.Arrays;
import java.util.List;
import wainbook.engineering.weights.axle.PassengerClass;
import wainbook.order.duty.Duty;
import wainbook.order.duty.Way;
import wainbook.order.limit.Body;
import wainbook.order.limit.WeightRules;
import wainbook.page.Option;
import wainbook.page.Words;

/** What can be chosen in the forms of duty and vehicle. */
public final class Choices {

    public List<Option> ways() {
        return Arrays.stream(Way.values())
                .map(way -> new Option(way.name(), Words.of("order.way." + way.name())))
                .toList();
    }

    public List<Option> rooms() {
        return options(Duty.Room.values(), "order.room.");
    }

    public List<Option> heaters() {
        return options(Duty.Heater.values(), "order.heater.");
    }

    public List<Option> packsInTheCold() {
        return options(Duty.PacksInTheCold.values(), "order.packsInTheCold.");
    }

    public List<Option> bodies() {
        return options(Body.values(), "order.body.");
    }

    public List<Option> markets() {
        return WeightRules.SETS.stream().map(set -> new Option(set, set)).toList();
    }

    public List<Option> classes() {
        return Arrays.stream(PassengerClass.values())
                .map(one -> new Option(one.name(), Words.of("order.passengerClass", one.name(), one.personKg())))
                .toList();
    }

    public List<Option> truths() {
        return List.of(new Option("true", Words.of("page.yes")), new Option("false", Words.of("page.no")));
    }

    private static <E extends Enum<E>> List<Option> options(E[] values, String prefix) {
        return Arrays.stream(values)
                .map(one -> new Option(one.name(), Words.of(prefix + one.name())))
                .toList();
    }
}
