package wainbook.ledger;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;

/** All kinds of entry that the program knows, old versions included, by name. */
public final class Kinds {

    private static final Set<Class<?>> SIMPLE = Set.of(
            String.class,
            int.class,
            Integer.class,
            long.class,
            Long.class,
            boolean.class,
            Boolean.class,
            BigDecimal.class,
            Instant.class,
            LocalDate.class,
            UUID.class);

    private final Map<String, Class<? extends Saying>> byName = new TreeMap<>();

    private Kinds() {}

    /**
     * Takes each room's sealed interface of sayings.
     *
     * @throws IllegalArgumentException if a saying has no {@link Kind}, two share one, or a component has a type that has
     *     more than one form in bytes
     */
    public static Kinds of(Collection<Class<? extends Saying>> families) {
        var kinds = new Kinds();
        families.forEach(kinds::addFamily);
        return kinds;
    }

    public Set<String> names() {
        return byName.keySet();
    }

    public static String name(Class<?> type) {
        Kind kind = type.getAnnotation(Kind.class);
        if (kind == null || !kind.value().matches("[a-z]+\\.[a-zA-Z]+/[1-9]\\d*")) {
            throw new IllegalArgumentException(type.getName() + " needs @Kind(\"room.said/1\")");
        }
        return kind.value();
    }

    public Optional<Class<? extends Saying>> type(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** Follows the readers of old versions up to the newest. */
    public static Saying newest(Saying said) {
        Saying newest = said;
        while (newest instanceof Superseded old) {
            newest = old.newer();
        }
        return newest;
    }

    private void addFamily(Class<? extends Saying> family) {
        if (!family.isSealed()) {
            throw new IllegalArgumentException(family.getName() + " must be sealed");
        }
        for (Class<?> member : family.getPermittedSubclasses()) {
            if (member.isInterface()) {
                addFamily(member.asSubclass(Saying.class));
            } else {
                checkRecord(member);
                Class<?> other = byName.put(name(member), member.asSubclass(Saying.class));
                if (other != null && other != member) {
                    throw new IllegalArgumentException(name(member) + " stands for both " + other + " and " + member);
                }
            }
        }
    }

    private static void checkRecord(Class<?> type) {
        if (!type.isRecord()) {
            throw new IllegalArgumentException(type.getName() + " must be a record");
        }
        for (RecordComponent component : type.getRecordComponents()) {
            checkType(component.getGenericType(), type.getName() + "." + component.getName());
        }
    }

    private static void checkType(Type type, String where) {
        if (type instanceof ParameterizedType generic
                && (generic.getRawType() == List.class || generic.getRawType() == Optional.class)) {
            checkType(generic.getActualTypeArguments()[0], where);
        } else if (type instanceof Class<?> plain && plain.isRecord()) {
            checkRecord(plain);
        } else if (type instanceof Class<?> plain && plain.isSealed() && plain.isInterface()) {
            Arrays.stream(plain.getPermittedSubclasses()).forEach(Kinds::checkRecord);
        } else if (!(type instanceof Class<?> plain && (SIMPLE.contains(plain) || plain.isEnum()))) {
            throw new IllegalArgumentException(where + ": " + type + " has more than one form in bytes");
        }
    }
}
