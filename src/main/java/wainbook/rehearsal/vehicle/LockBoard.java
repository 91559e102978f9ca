package wainbook.rehearsal.vehicle;

import java.util.List;
import wainbook.isolation.fact.Register;
import wainbook.isolation.step.LockRow;
import wainbook.rehearsal.chance.Dice;

/** Where locks, tags, boxes and keys hang that are free to be taken. */
record LockBoard(Register register, Dice dice) {

    /** A person's own lock, or a spare one. */
    String lockOf(String person) {
        List<String> locks = register.items().stream()
                .filter(item -> item.sort() == Register.Sort.LOCK && !item.retired())
                .filter(item -> item.owner().filter(person::equals).isPresent()
                        || item.owner().isEmpty())
                .sorted((one, other) ->
                        Boolean.compare(one.owner().isEmpty(), other.owner().isEmpty()))
                .map(Register.Item::number)
                .filter(number -> LockRow.at(number).isEmpty())
                .toList();
        return AtVehicle.needed(locks.stream().findFirst(), "a lock of " + person);
    }

    String spare(Register.Sort sort) {
        return dice.one(register.items().stream()
                .filter(item -> item.sort() == sort && !item.retired())
                .map(Register.Item::number)
                .toList());
    }
}
