# SPDX-License-Identifier: MIT
# What takes its edge off a fault that nobody has found: all that Debian's hardening=+all has. tests/package looks for it in
# what is built. The sanitizers have their own, and -O0 has none of the library's checks.
if(SCRUPLE_SANITIZE OR SCRUPLE_COVERAGE)
    return()
endif()

include(CheckCXXCompilerFlag)
add_compile_options(-fstack-protector-strong -Wformat -Werror=format-security
                    "$<$<NOT:$<CONFIG:Debug>>:-U_FORTIFY_SOURCE;-D_FORTIFY_SOURCE=2>")
# A flag of another processor is a warning to some compilers.
set(CMAKE_REQUIRED_FLAGS -Werror)
foreach(flag -fstack-clash-protection -fcf-protection -mbranch-protection=standard)
    string(MAKE_C_IDENTIFIER "HAS${flag}" has)
    check_cxx_compiler_flag(${flag} ${has})
    if(${has})
        add_compile_options(${flag})
    endif()
endforeach()
unset(CMAKE_REQUIRED_FLAGS)
add_link_options(LINKER:-z,relro LINKER:-z,now LINKER:-z,noexecstack)
