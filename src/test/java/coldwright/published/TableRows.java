package coldwright.published;

import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.ArgumentsProvider;
import org.junit.jupiter.params.support.AnnotationConsumer;
import org.junit.jupiter.params.support.ParameterDeclarations;

import java.util.stream.Stream;

/** The rows that {@link FromTable} asks for. */
final class TableRows implements ArgumentsProvider, AnnotationConsumer<FromTable> {
    private String name = "";

    @Override
    public void accept(FromTable asked) {
        name = asked.value();
    }

    @Override
    public Stream<? extends Arguments> provideArguments(
            ParameterDeclarations parameters, ExtensionContext context) {
        PublishedTable table = PublishedTable.read(name);
        return Stream.concat(table.fits().stream(), table.checks().stream()).map(Arguments::of);
    }
}
