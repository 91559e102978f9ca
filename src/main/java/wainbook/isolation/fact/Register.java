package wainbook.isolation.fact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.isolation.IsolationSaying.ItemRegistered;
import wainbook.isolation.IsolationSaying.ItemRetired;
import wainbook.ledger.Entry;
import wainbook.ledger.History;

/** The numbered locks, lock boxes, tags and vehicle keys of the works, read from the works’ stream. */
public record Register(List<Item> items) {

    /** What is numbered. */
    public enum Sort {
        LOCK,
        LOCK_BOX,
        TAG,
        VEHICLE_KEY
    }

    /** One numbered thing; a personal lock has an owner, and nobody else puts it on. */
    public record Item(String number, Sort sort, Optional<String> owner, boolean retired) {}

    public Register {
        items = List.copyOf(items);
    }

    public static Register of(History works) {
        var register = new Register(List.of());
        for (Entry entry : works.entries()) {
            if (entry.saying() instanceof ItemRegistered said) {
                register = register.with(new Item(said.number(), said.sort(), said.owner(), false));
            } else if (entry.saying() instanceof ItemRetired said) {
                var retired = register.item(said.number());
                if (retired.isPresent()) {
                    register = register.with(new Item(
                            said.number(), retired.get().sort(), retired.get().owner(), true));
                }
            }
        }
        return register;
    }

    public Optional<Item> item(String number) {
        return items.stream().filter(item -> item.number().equals(number)).findFirst();
    }

    /** Whether a number stands for a thing of this sort that is in use. */
    public boolean holds(Sort sort, String number) {
        return item(number)
                .filter(item -> item.sort() == sort && !item.retired())
                .isPresent();
    }

    private Register with(Item next) {
        var others = new ArrayList<>(items);
        others.removeIf(item -> item.number().equals(next.number()));
        others.add(next);
        return new Register(others);
    }
}
