package wainbook.house;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import jakarta.annotation.security.DenyAll;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import java.lang.annotation.Annotation;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One way into the app, as its class declares it.
 *
 * @param path without the patterns of its parameters
 * @param consumes the first media type it takes, where it names one
 * @param declared what it says about who may, on the method or else on the class; one, unless somebody forgot or doubled it
 */
record Endpoint(String verb, String path, Optional<String> consumes, List<Annotation> declared, String method) {

    private static final java.nio.file.Path COMPILED = java.nio.file.Path.of("target/classes/wainbook");
    private static final List<Class<? extends Annotation>> WHO =
            List.of(RolesAllowed.class, io.quarkus.security.Authenticated.class, PermitAll.class, DenyAll.class);

    static List<Endpoint> all() {
        List<Endpoint> all = new ArrayList<>();
        for (JavaClass type : new ClassFileImporter().importPath(COMPILED)) {
            Arrays.stream(loaded(type.getName()).getDeclaredMethods())
                    .flatMap(Endpoint::of)
                    .forEach(all::add);
        }
        all.sort(Comparator.comparing(Endpoint::path).thenComparing(Endpoint::verb));
        return all;
    }

    boolean api() {
        return path.startsWith("/api/");
    }

    /** What the annotation grants to somebody with these roles, who is signed in or not. */
    boolean admits(boolean signedIn, Optional<String> role) {
        Annotation who = declared.get(0);
        if (who instanceof RolesAllowed named) {
            return role.filter(Arrays.asList(named.value())::contains).isPresent();
        }
        return who instanceof PermitAll || (signedIn && !(who instanceof DenyAll));
    }

    private static Stream<Endpoint> of(Method method) {
        return Arrays.stream(method.getAnnotations())
                .map(annotation -> annotation.annotationType().getAnnotation(HttpMethod.class))
                .filter(verb -> verb != null)
                .map(verb -> new Endpoint(
                        verb.value(), pathOf(method), consumesOf(method), whoMay(method), method.toString()));
    }

    private static String pathOf(Method method) {
        String joined = Stream.of(method.getDeclaringClass(), method)
                .map(element -> element.getAnnotation(Path.class))
                .filter(path -> path != null)
                .map(Path::value)
                .collect(Collectors.joining("/", "/", ""));
        String plain = joined.replaceAll("\\{\\s*(\\w+)\\s*(:(?:[^{}]|\\{[^{}]*})*)?}", "{$1}")
                .replaceAll("/+", "/");
        return plain.length() > 1 ? plain.replaceAll("/$", "") : plain;
    }

    private static Optional<String> consumesOf(Method method) {
        return Stream.of(method, method.getDeclaringClass())
                .map(element -> element.getAnnotation(Consumes.class))
                .filter(consumes -> consumes != null)
                .map(consumes -> consumes.value()[0])
                .findFirst();
    }

    private static List<Annotation> whoMay(Method method) {
        List<Annotation> own = who(method);
        return own.isEmpty() ? who(method.getDeclaringClass()) : own;
    }

    private static List<Annotation> who(AnnotatedElement element) {
        return WHO.stream()
                .flatMap(type -> Stream.ofNullable((Annotation) element.getAnnotation(type)))
                .toList();
    }

    private static Class<?> loaded(String name) {
        try {
            return Class.forName(name, false, Thread.currentThread().getContextClassLoader());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }
}
