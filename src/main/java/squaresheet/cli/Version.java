package squaresheet.cli;

import picocli.CommandLine.IVersionProvider;

/** The version, as the jar states it. */
final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    String version = Version.class.getPackage().getImplementationVersion();
    return new String[] {"squaresheet " + (version == null ? "(not packaged)" : version)};
  }
}
