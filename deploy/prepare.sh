# Sourced by the commands beside it: finds Python, makes `.venv` once, installs the locked packages and the project.
# After the first time only a checksum is compared. POSIX sh; every failure is one sentence.
# shellcheck shell=sh

root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd -P)
cd -- "$root" || exit 1
venv=$root/.venv
python=$venv/bin/python
log=$venv/install.log
# Bytecode and caches lie inside .venv, so that the checkout stays as it was. Where the machine asks for no bytecode it
# is written there all the same: else every process compiles all it imports anew, which takes it seconds.
cache=$venv/cache
unset PYTHONDONTWRITEBYTECODE
# Without a HOME, pip and others would put their caches into the checkout.
[ -n "${HOME-}" ] || export HOME="$cache/home"
oldest=3.11

say() { printf '%s\n' "$*" >&2; }
fail() {
    say "$*"
    exit 1
}

is_new_enough() { "$1" -c 'import sys; sys.exit(sys.version_info < (3, 11))' >/dev/null 2>&1; }

find_python() {
    too_old=''
    for name in python3.14 python3.13 python3.12 python3.11 python3 python; do
        command -v "$name" >/dev/null 2>&1 || continue
        if is_new_enough "$name"; then
            system_python=$(command -v "$name")
            return
        fi
        version=$("$name" -c 'import sys; print("%d.%d" % sys.version_info[:2])' 2>/dev/null) || continue
        too_old="$name is $version"
    done
    [ -z "$too_old" ] || fail "followup needs Python $oldest or newer, and $too_old: please install a newer one."
    fail "followup needs Python $oldest or newer, and there is none on PATH: please install it (for example: apt-get install python3 python3-venv)."
}

make_environment() {
    find_python
    if [ -e "$venv" ] && [ ! -e "$venv/pyvenv.cfg" ]; then
        fail "$venv exists but is no Python environment: please move it away and run again."
    fi
    rm -rf -- "$venv"
    say "Preparing .venv with $system_python (once; a minute or so) ..."
    if "$system_python" -m venv --without-pip "$venv" >/dev/null 2>&1; then return; fi
    rm -rf -- "$venv"
    fail "$system_python cannot make a virtual environment: please install its venv module (on Debian and Ubuntu: apt-get install python3-venv)."
}

# `install ARGUMENTS`: into .venv; by uv where it is on PATH and can (it may not know the machine's certificates).
install() {
    if command -v uv >/dev/null 2>&1 && uv pip install --quiet --python "$python" "$@" >>"$log" 2>&1; then return; fi
    find_pip
    run_pip install --quiet --no-input --disable-pip-version-check --retries 2 --no-compile "$@" >>"$log" 2>&1
}

# The pip that Python brings or, where Debian keeps that in a package of its own, the system's pip for our Python.
find_pip() {
    system_python=''
    run_pip --version >/dev/null 2>&1 && return
    "$python" -m ensurepip >>"$log" 2>&1 && return
    find_python
    run_pip --version >/dev/null 2>&1 && return
    fail "Neither .venv nor $system_python has pip: please install it (on Debian and Ubuntu: apt-get install python3-venv)."
}

run_pip() {
    if [ -z "$system_python" ]; then "$python" -m pip "$@"; else "$system_python" -m pip --python "$python" "$@"; fi
}

# What the environment was made from: a change of any of it installs again (the folder too: scripts hold its name).
checksum() {
    { printf '%s\n' "$root" && cat deploy/requirements.txt deploy/requirements-dev.txt pyproject.toml; } | cksum
}

is_prepared() { [ -r "$venv/prepared-$1" ] && [ "$(cat "$venv/prepared-$1")" = "$sum" ]; }

# `prepare runtime` for the program alone, `prepare development` for the checks too.
prepare() {
    sum=$(checksum)
    if [ ! -e "$python" ] || ! is_new_enough "$python"; then make_environment; fi
    if is_prepared development || is_prepared "$1"; then return; fi
    lock=deploy/requirements.txt
    [ "$1" = runtime ] || lock=deploy/requirements-dev.txt
    say "Installing the packages of $lock (once) ..."
    rm -f -- "$venv/prepared-runtime" "$venv/prepared-development"
    : >"$log"
    install --require-hashes -r "$lock" ||
        fail "The packages of $lock could not be installed: is there a network? (details: $log)"
    install --no-deps --no-build-isolation -e . ||
        fail "followup itself could not be installed into .venv (details: $log)"
    printf '%s\n' "$sum" >"$venv/prepared-$1"
}
