# What the scripts beside this file share. They set $root, the project's folder, and read this file in.
# Nothing here changes the working directory: relative paths on the command line stay the caller's.

cache=$root/.cache
example=$root/examples/ostrick-vale/ostrick-vale.amberyard
java_floor=17
maven_floor=3.9
maven_fetched=3.9.9

say() {
    printf '%s\n' "$*" >&2
}

die() {
    say "$@"
    exit 1
}

# need_packages PACKAGE ...: installs Debian packages, or says how to.
need_packages() {
    if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
        say "Installing $*"
        mkdir -p "$cache"
        if apt-get -o DPkg::Lock::Timeout=120 update >"$cache/apt.log" 2>&1 &&
            DEBIAN_FRONTEND=noninteractive apt-get -o DPkg::Lock::Timeout=120 install -y --no-install-recommends "$@" >>"$cache/apt.log" 2>&1; then
            return
        fi
        cat "$cache/apt.log" >&2
    fi
    die "Missing on this machine: $*. On Debian or Ubuntu: sudo apt-get install $*"
}

on_linux() {
    [ "$(uname -s)" = Linux ]
}

has_library() {
    PATH=$PATH:/sbin:/usr/sbin ldconfig -p 2>/dev/null | grep -q "$1"
}

has_font() {
    [ -n "$(find /usr/share/fonts "${HOME:-/nowhere}/.fonts" "${HOME:-/nowhere}/.local/share/fonts" \
        \( -name '*.ttf' -o -name '*.otf' \) -print 2>/dev/null | head -n 1)" ]
}

# Charts need a font even where nothing is shown on a screen.
need_fonts() {
    if on_linux && ! has_font; then
        need_packages fonts-dejavu-core fontconfig
    fi
}

need_window_toolkit() {
    if on_linux && ! has_library libgtk-3.so.0; then
        need_packages libgtk-3-0
    fi
}

java_command() {
    if [ -n "${JAVA_HOME:-}" ]; then
        echo "$JAVA_HOME/bin/$1"
    else
        echo "$1"
    fi
}

has_jdk() {
    compiler=$("$(java_command javac)" -version 2>&1) || return 1
    major=$(printf '%s\n' "$compiler" | sed -n 's/^javac \([0-9]*\).*/\1/p')
    [ "${major:-0}" -ge "$java_floor" ]
}

need_jdk() {
    has_jdk && return
    [ -z "${JAVA_HOME:-}" ] || die "JAVA_HOME=$JAVA_HOME holds no JDK $java_floor or newer."
    need_packages "openjdk-$java_floor-jdk-headless"
    has_jdk || die "A JDK $java_floor or newer is needed; set JAVA_HOME to one."
}

# is_new_enough MAVEN: Tycho refuses older ones.
is_new_enough() {
    found=$("$1" --version 2>/dev/null | sed -n 's/.*Apache Maven \([0-9.]*\).*/\1/p' | head -n 1)
    [ -n "$found" ] && [ "$(printf '%s\n%s\n' "$maven_floor" "$found" | sort -t . -k 1,1n -k 2,2n | head -n 1)" = "$maven_floor" ]
}

# Sets $maven. A distribution's older Maven is good enough to fetch the one that is needed.
need_maven() {
    need_jdk
    maven=mvn
    is_new_enough "$maven" && return
    maven=$cache/maven/apache-maven-$maven_fetched/bin/mvn
    [ -x "$maven" ] && return
    command -v mvn >/dev/null || need_packages maven
    say "Fetching Maven $maven_fetched"
    mkdir -p "$cache/maven"
    (cd "$cache" && mvn -q -B org.apache.maven.plugins:maven-dependency-plugin:3.6.1:unpack \
        -Dartifact=org.apache.maven:apache-maven:$maven_fetched:zip:bin -DoutputDirectory="$cache/maven") ||
        die "Maven $maven_fetched could not be fetched."
}

# The compiler compiles anew what has changed, but not what calls it; so when any source has changed, nothing that was compiled stays.
forget_stale_classes() {
    sums=$cache/sources.sum
    mkdir -p "$cache"
    now=$(cd "$root" && find bundles releng \( -name target -o -name src-gen \) -prune -o -type f \( -name '*.java' -o -name '*.ecore' \) -exec cksum {} + |
        LC_ALL=C sort | cksum)
    [ "$now" = "$(cat "$sums" 2>/dev/null || :)" ] && return
    rm -rf "$root"/bundles/*/target/classes "$root"/bundles/*/target/test-classes "$root"/releng/*/target/classes
    echo "$now" >"$sums"
}

# run_maven ARGUMENT ...
run_maven() {
    need_maven
    forget_stale_classes
    MAVEN_OPTS=${MAVEN_OPTS:--Xmx2g} "$maven" -q -B -ntp -f "$root/pom.xml" "$@"
}

# The folder of this platform's product.
product_folder() {
    machine=$(uname -m)
    case $machine in
        amd64) machine=x86_64 ;;
        arm64) machine=aarch64 ;;
    esac
    products=$root/releng/product/target/products/amberyard
    case $(uname -s) in
        Linux) echo "$products/linux/gtk/$machine" ;;
        Darwin) echo "$products/macosx/cocoa/$machine/Amberyard.app/Contents/Eclipse" ;;
        *) die "There is no start script for $(uname -s) here; build with Maven and start amberyard.bat from the product." ;;
    esac
}

start_script() {
    case $(uname -s) in
        Darwin) echo "$(product_folder)/amberyard.command" ;;
        *) echo "$(product_folder)/amberyard" ;;
    esac
}

# A checksum over the content of everything the product is made from.
product_fingerprint() {
    (cd "$root" && find pom.xml bundles features releng examples \
        \( -type d \( -name src-gen -o -name '*.tests' -o -name benchmarks -o -name target ! -path releng/target \) -prune \) \
        -o -type f ! -name '.*' -print | LC_ALL=C sort | tr '\n' '\0' | xargs -0 cksum | cksum)
}

built_fingerprint=$root/releng/product/target/fingerprint

product_is_current() {
    [ -x "$(start_script)" ] && [ -f "$built_fingerprint" ] &&
        [ "$(cat "$built_fingerprint")" = "$(product_fingerprint)" ]
}

# mark_product FINGERPRINT: notes what the product was built from, taken before the build in case files change meanwhile.
mark_product() {
    printf '%s\n' "$1" >"$built_fingerprint"
}

need_product() {
    product_is_current && return
    say "Building Amberyard; the first build fetches its dependencies and takes a few minutes."
    fingerprint=$(product_fingerprint)
    rm -f "$built_fingerprint"
    run_maven verify -Dproduct.only -Pthis-platform || die "The build failed."
    mark_product "$fingerprint"
}
