package wainbook.process;

import java.util.List;
import java.util.Optional;
import wainbook.ledger.History;
import wainbook.process.ProcessSaying.ComponentsReleased;
import wainbook.process.component.Component;

/** The parts of the works as they were released, with the revision. */
public record ComponentLibrary(List<Component> components, int revision) {

    public ComponentLibrary {
        components = List.copyOf(components);
    }

    /** As in force; nothing in revision 0 where nothing was released. */
    public static ComponentLibrary of(History works) {
        return works.last(ComponentsReleased.class)
                .map(said -> new ComponentLibrary(said.components(), said.revision()))
                .orElse(new ComponentLibrary(List.of(), 0));
    }

    /** A revision that was in force once. */
    public static Optional<ComponentLibrary> of(History works, int revision) {
        return works.saying(ComponentsReleased.class)
                .map(entry -> (ComponentsReleased) entry.saying())
                .filter(said -> said.revision() == revision)
                .map(said -> new ComponentLibrary(said.components(), said.revision()))
                .findFirst();
    }

    public ComponentLibrary of(String vehicleKind) {
        return new ComponentLibrary(
                components.stream()
                        .filter(one -> one.vehicleKind().equals(vehicleKind))
                        .toList(),
                revision);
    }

    /** What comes out and goes in whatever the number of packs. */
    public List<Component> besidesPacks() {
        return components.stream()
                .filter(one -> one.sort() != Component.Sort.PACK)
                .toList();
    }

    public List<String> packTypes() {
        return components.stream()
                .flatMap(one -> one.packType().stream())
                .distinct()
                .toList();
    }

    /** The places for packs of a type, in the order in which they are filled: that of their codes. */
    public List<Component> packs(String type) {
        return components.stream()
                .filter(one -> one.packType().equals(Optional.of(type)))
                .sorted((one, other) -> one.code().compareTo(other.code()))
                .toList();
    }
}
